package crowdline.console.live.strip;

import crowdline.console.live.row.LiveMoment;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.theme.Tone;
import crowdline.follow.FollowNow;
import crowdline.live.event.Source;
import crowdline.live.now.FigureNow;
import crowdline.live.state.Course;
import crowdline.live.state.Phase;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Hour;
import crowdline.show.Act;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/** Says the strip. */
public final class StripPresenter {
    /** Less than this against the plan is on time: nobody in the crowd could tell. Tuned. */
    private static final double ON_TIME_S = 3;
    /** Readings older than this are worth a look; readings come at 1 to 10 Hz. Tuned. */
    private static final double OLD_READING_S = 2;

    private static final double LOST_READING_S = 10;
    private static final double FAIRLY_SURE = 0.6;

    private StripPresenter() {}

    public static StripView of(LiveMoment moment, ShowLookup words) {
        Act act = words.act(moment.state().actId()).orElse(null);
        StripView view = new StripView(
                act == null ? words.show().title() : words.who(act),
                time(moment, act),
                drift(moment),
                source(moment.state().course()),
                sureness(moment),
                reading(moment),
                hour(moment.clock().toLocalTime()));
        return moment.state().listened().isOn() ? view.listening() : view;
    }

    public static String hour(LocalTime hour) {
        return Hour.toTheSecond(hour);
    }

    private static String time(LiveMoment moment, @Nullable Act act) {
        Double actTimeS = moment.now().actTimeS();
        if (actTimeS == null) {
            return act == null ? "no act yet" : "not begun";
        }
        if (moment.state().phase() instanceof Phase.ActDone) {
            return Seconds.clock(actTimeS) + " flown";
        }
        return Seconds.clock(actTimeS) + (act == null ? "" : ", slot " + Seconds.clock(act.slotMinutes() * 60));
    }

    private static Mark drift(LiveMoment moment) {
        if (moment.state().phase() instanceof Phase.Held held) {
            double heldS = moment.now().nowS() - held.heldSinceS();
            return new Mark(Form.BARS, Tone.CAUTION, "On hold " + Seconds.left(heldS));
        }
        Double lateS = moment.now().lateS();
        if (lateS == null) {
            return new Mark(Form.RING, Tone.CALM, "Waiting");
        }
        if (Math.abs(lateS) < ON_TIME_S) {
            return new Mark(Form.DISC, Tone.GOOD, "On time");
        }
        return lateS > 0
                ? new Mark(Form.DOWN, Tone.CAUTION, Seconds.left(lateS) + " late")
                : new Mark(Form.UP, Tone.CAUTION, Seconds.left(-lateS) + " early");
    }

    private static Mark source(Course course) {
        if (course.clockStandsIn()) {
            return new Mark(Form.CLOCK, Tone.CAUTION, "Clock");
        }
        return switch (course.source()) {
            case HAND -> new Mark(Form.SQUARE, Tone.CALM, "Keys");
            case CLOCK -> new Mark(Form.CLOCK, Tone.CALM, "Clock");
            case AIRCRAFT -> new Mark(Form.AEROPLANE, Tone.CALM, "Aircraft");
        };
    }

    private static Mark sureness(LiveMoment moment) {
        Phase phase = moment.state().phase();
        if (phase instanceof Phase.OffPlan) {
            return new Mark(Form.CROSS, Tone.CAUTION, "Off plan");
        }
        FigureNow figure = moment.now().figure();
        if (figure == null) {
            return new Mark(Form.RING, Tone.CALM, phase instanceof Phase.Waiting ? "Not begun" : "Act over");
        }
        if (figure.waitsForHand()) {
            return new Mark(Form.ONE_OF_THREE, Tone.CAUTION, "Over time");
        }
        if (moment.state().course().clockStandsIn()) {
            return new Mark(Form.CROSS, Tone.CAUTION, lost(moment));
        }
        Double sureness = moment.tracking().sureness();
        if (moment.state().source() == Source.AIRCRAFT && sureness != null) {
            if (sureness > FollowNow.SURE) {
                return new Mark(Form.THREE_OF_THREE, Tone.GOOD, "Sure");
            }
            return sureness >= FAIRLY_SURE
                    ? new Mark(Form.TWO_OF_THREE, Tone.CALM, "Fairly sure")
                    : new Mark(Form.ONE_OF_THREE, Tone.CAUTION, "Not sure");
        }
        return switch (moment.state().source()) {
            case HAND -> new Mark(Form.THREE_OF_THREE, Tone.CALM, "By keys");
            case CLOCK -> new Mark(Form.TWO_OF_THREE, Tone.CALM, "By time");
            case AIRCRAFT -> new Mark(Form.ONE_OF_THREE, Tone.CAUTION, "Not sure");
        };
    }

    /** Why the clock stands in for the aircraft. */
    public static String lost(LiveMoment moment) {
        Double ageS = moment.tracking().readingAgeS();
        return ageS == null || ageS >= OLD_READING_S ? "No position" : "Position unclear";
    }

    /** Where nobody follows an aircraft, that it was never read is no news. */
    private static @Nullable Mark reading(LiveMoment moment) {
        Double ageS = moment.tracking().readingAgeS();
        if (ageS == null) {
            return moment.state().source() == Source.AIRCRAFT ? new Mark(Form.RING, Tone.CALM, "None") : null;
        }
        if (ageS < OLD_READING_S) {
            return new Mark(Form.DISC, Tone.GOOD, Seconds.age(ageS));
        }
        return ageS < LOST_READING_S
                ? new Mark(Form.DIAMOND, Tone.CAUTION, Seconds.age(ageS))
                : new Mark(Form.CROSS, Tone.ALARM, Seconds.age(ageS));
    }
}
