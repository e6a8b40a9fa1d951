package crowdline.console.live.now;

import crowdline.console.live.day.OrderPresenter;
import crowdline.console.live.row.LiveMoment;
import crowdline.console.live.strip.StripPresenter;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.paint.Spare;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Tone;
import crowdline.live.event.Source;
import crowdline.live.now.DayNow;
import crowdline.live.now.FigureNow;
import crowdline.live.now.LiveNow;
import crowdline.live.now.Upcoming;
import crowdline.live.state.Course;
import crowdline.live.state.Phase;
import crowdline.live.state.Refusals;
import crowdline.loaded.ShowLookup;
import crowdline.show.Act;
import crowdline.show.bounds.Written;
import crowdline.sight.ActSheet;
import crowdline.sight.SideView;
import java.time.Duration;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Says what is being flown, or what the wait is for. */
public final class NowPresenter {
    /** A countdown's bar is full at this many seconds; tuned: as long as one would stand ready. */
    private static final double COUNTDOWN_S = 600;
    /** Steps of the bar: it is painted again only when the change can be seen. */
    private static final double STEPS = 400;

    /** A start by the aircraft is said for so long into the figure, seconds. Tuned: it is told up to 10 s after it began. */
    private static final double BEGUN_S = 20;

    /** A gap that is longer is none that is talked through, seconds. */
    private static final double MOST_GAP_S = 2 * 3600;

    /** A slot is late from here on, seconds: before it no minute is full. */
    private static final double LATE_FROM_S = 60;

    private NowPresenter() {}

    public static NowView of(LiveMoment moment, ShowLookup words) {
        Act act = words.act(moment.state().actId()).orElse(null);
        ActSheet sheet = words.sheet(moment.state().actId(), moment.state().variant());
        LiveNow now = moment.now();
        FigureNow figure = now.figure();
        if (figure != null) {
            return flying(moment, words, act, sheet, figure);
        }
        Phase phase = moment.state().phase();
        if (phase instanceof Phase.OffPlan) {
            Double offS = now.offPlanS();
            String since = offS == null ? "" : "For " + Seconds.left(offS) + ". ";
            return new NowView(
                    caption("Flying now", moment, act),
                    new Mark(Form.CROSS, Tone.CAUTION, "Off plan"),
                    "Off plan",
                    since
                            + (moment.state().course().source() == Source.AIRCRAFT
                                    ? "It goes on by itself when the plan does; or press Space."
                                    : "Press Space when the next figure of the plan begins."),
                    0,
                    "",
                    sheet.at(-1, 0, moment.tracking().craft()));
        }
        if (phase instanceof Phase.Waiting && act != null) {
            return waiting(moment, words, act, sheet);
        }
        return between(moment, words);
    }

    private static NowView flying(
            LiveMoment moment, ShowLookup words, @Nullable Act act, ActSheet sheet, FigureNow figure) {
        String name = words.name(act, moment.state().variant(), figure.figureId());
        // Where the clock stands in, nothing is read that could leave a doubt.
        String other = moment.state().course().clockStandsIn()
                ? null
                : moment.tracking().otherName();
        double wholeS = figure.wholeS();
        double leftShare = wholeS <= 0 ? 0 : figure.leftS() / wholeS;
        String left = figure.held()
                ? "held"
                : figure.overS() > 0 ? Spare.over(figure.overS(), tenths(0)) : tenths(figure.leftS());
        Mark state = null;
        if (figure.held()) {
            state = new Mark(Form.BARS, Tone.CAUTION, "On hold: press H to carry on");
        } else if (moment.state().course().clockStandsIn()) {
            state = figure.waitsForHand()
                    ? new Mark(Form.DIAMOND, Tone.CAUTION, StripPresenter.lost(moment) + ": " + untilSpace(moment))
                    : new Mark(Form.CLOCK, Tone.CAUTION, StripPresenter.lost(moment) + ": the clock carries on");
        } else if (moment.state().course().begunByAircraft() && figure.timeInS() < BEGUN_S) {
            state = new Mark(Form.AEROPLANE, Tone.CALM, "Begun by the aircraft: press Backspace if not");
        } else if (figure.waitsForHand()) {
            state = new Mark(Form.DIAMOND, Tone.CAUTION, "Over time: " + untilSpace(moment));
        } else if (figure.pause().goneS() > 0 && figure.overS() <= 0) {
            state = new Mark(
                    Form.CLOCK,
                    Tone.CALM,
                    "Flown: the next in " + Seconds.left(figure.pause().leftS()));
        } else if (figure.overS() > 0 && isLast(moment)) {
            state = new Mark(Form.DIAMOND, Tone.CALM, "Over time: " + untilSpace(moment));
        }
        double gone = wholeS <= 0 ? 1 : Math.min(1, figure.timeInS() / wholeS);
        return new NowView(
                        caption("Flying now", moment, act),
                        state,
                        other == null || other.equals(name) ? name : name + " or " + lowerFirst(other),
                        words.look(act, figure.figureId()),
                        steps(leftShare),
                        left,
                        sheet.at(figure.index(), gone, moment.tracking().craft()),
                        SeenPresenter.of(moment, words, figure))
                .sketched(sketch(words, act, sheet, figure.index(), figure.figureId()));
    }

    /** A figure that is only timed, as it usually looks. */
    private static SkyView sketch(
            ShowLookup words, @Nullable Act act, ActSheet sheet, int index, @Nullable String figureId) {
        return act == null || figureId == null || sheet.path(index).spots(index).size() > 1
                ? SkyView.NONE
                : SkyView.whole(words.sketch(act, figureId), sheet.outline());
    }

    private static boolean isLast(LiveMoment moment) {
        return moment.now().upcoming().isEmpty();
    }

    private static String untilSpace(LiveMoment moment) {
        return "Space " + (isLast(moment) ? "when the act is over" : "at the next figure");
    }

    private static NowView waiting(LiveMoment moment, ShowLookup words, Act act, ActSheet sheet) {
        Double toSlotS = moment.now().toSlotS();
        SlotDay day = SlotDay.of(moment, act);
        Mark slot = day.isToday()
                ? new Mark(Form.RING, Tone.CALM, "Slot " + slot(moment, words, act))
                : new Mark(Form.DIAMOND, Tone.CAUTION, "Not today");
        // What to press comes first where it is about to be: where letters are large, what stands last is cut.
        String look = day.isToday()
                ? howItBegins(moment) + " " + Written.begun(act.title())
                        + (words.whoElse(act).isEmpty() ? "" : ": " + words.whoElse(act)) + "."
                : Written.begun(act.title()) + ". " + day.told() + " " + howItBegins(moment);
        SideView side = sheet.at(-1, 0, moment.tracking().craft());
        String caption = caption("Before the act", moment, act);
        Upcoming first = moment.now().upcoming().stream().findFirst().orElse(null);
        double aheadS = toSlotS == null ? 0 : Math.max(0, toSlotS);
        return new NowView(
                        caption,
                        slot,
                        !day.isToday() ? day.when() : aheadS > 0 ? "On in " + Seconds.left(aheadS) : due(toSlotS),
                        look,
                        steps(Math.min(1, aheadS / COUNTDOWN_S)),
                        // The countdown is the name itself; said twice it would leave no room for what to press.
                        day.isToday() || aheadS <= 0 ? "" : Seconds.left(aheadS),
                        side)
                .sketched(first == null ? SkyView.NONE : sketch(words, act, sheet, first.index(), first.figureId()));
    }

    /** What is being looked at, and in which variant where there are several. */
    private static String caption(String what, LiveMoment moment, @Nullable Act act) {
        String variant = moment.state().variant();
        boolean several = act != null && act.variants().size() > 1;
        return several && variant != null ? what + " \u00b7 Variant: " + variant : what;
    }

    /** How late a slot is, in minutes: nobody on the crowd line counts it in seconds. */
    private static String due(@Nullable Double toSlotS) {
        double lateS = toSlotS == null ? 0 : -toSlotS;
        return lateS < LATE_FROM_S ? "Due now" : "Due now, " + Seconds.minutes(lateS) + " late";
    }

    /** Never more than is so: the aircraft begins the act only where it leads, was seen to wait, and was not wrong before. */
    private static String howItBegins(LiveMoment moment) {
        Course course = moment.state().course();
        if (course.source() != Source.AIRCRAFT) {
            return "Press Space when the first figure begins.";
        }
        if (!course.aircraftMayBegin()) {
            return "Start taken back: press Space when the first figure begins.";
        }
        return moment.tracking().begins()
                ? "The aircraft begins it, or press Space."
                : "The aircraft cannot begin it yet: press Space when the first figure begins.";
    }

    private static NowView between(LiveMoment moment, ShowLookup words) {
        Act next = words.act(moment.now().nextActId()).orElse(null);
        Phase phase = moment.state().phase();
        String caption = phase instanceof Phase.ActDone ? "After the act" : "Between acts";
        Mark over = new Mark(Form.DISC, Tone.GOOD, phase instanceof Phase.ActDone ? "Act over" : "Nothing in the air");
        if (next == null) {
            return new NowView(
                    caption,
                    over,
                    "No more acts",
                    "F6 opens the debrief. Or " + Refusals.FLY_AGAIN,
                    0,
                    "",
                    SideView.NONE);
        }
        return new NowView(
                caption,
                over,
                "Next: " + next.title(),
                (words.whoElse(next).isEmpty() ? "Slot " : words.whoElse(next) + ", slot ") + slot(moment, words, next)
                        + until(moment, words, next) + ". Press N for it.",
                0,
                "",
                SideView.NONE);
    }

    /** How long the gap before an act still is, in minutes: nobody counts it in seconds until it is chosen. */
    private static String until(LiveMoment moment, ShowLookup words, Act next) {
        Duration left = Duration.between(moment.clock(), DayNow.slot(moment.state(), words.show(), next));
        double leftS = left.toSeconds();
        return leftS < LATE_FROM_S || leftS > MOST_GAP_S ? "" : ", in " + Seconds.minutes(leftS);
    }

    /** The hour of a slot on the day, and by how much that is not as planned. */
    private static String slot(LiveMoment moment, ShowLookup words, Act act) {
        String moved = OrderPresenter.moved(moment.state().day().laterS(act.id()));
        return OrderPresenter.hour(DayNow.slot(moment.state(), words.show(), act))
                + (moved.isEmpty() ? "" : ", " + moved);
    }

    private static String tenths(double seconds) {
        return seconds < 10 ? String.format(Locale.ROOT, "%.1f s", seconds) : Seconds.left(seconds);
    }

    private static double steps(double share) {
        return Math.max(0, Math.min(1, Math.round(share * STEPS) / STEPS));
    }

    private static String lowerFirst(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
