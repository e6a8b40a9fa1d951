package crowdline.app.demo;

import crowdline.console.debrief.DebriefPresenter;
import crowdline.console.debrief.DebriefView;
import crowdline.live.debrief.Debrief;
import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.Prediction;
import crowdline.patter.Placed;
import crowdline.sheet.day.OtherDay;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.show.figure.RemarkForm;
import crowdline.timing.FigureTime;
import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** A show's acts flown, each later than the one before, through the real state machine, as a debrief has it, for pictures. */
final class DemoDebrief {
    private final LoadedShow loaded;
    private LiveState state = LiveState.initial();

    DemoDebrief(LoadedShow loaded) {
        this.loaded = loaded;
    }

    /** The views, each under the name of its picture. */
    Map<String, DebriefView> views() {
        Map<String, DebriefView> views = new LinkedHashMap<>();
        Act act = loaded.show().acts().get(0);
        happens(opened());
        views.put("debrief-empty", view(act, null));
        fly(act, 100, 1.05);
        happens(new IncidentEvent.IncidentOpened(600));
        happens(new IncidentEvent.IncidentClosed(652, true));
        happens(new AnnouncementEvent.AnnouncementRead(
                700, "lost", "Lost child", List.of("A boy of four is waiting at the blue tent.")));
        List<Act> acts = loaded.show().acts();
        for (Act next : acts.subList(1, acts.size())) {
            double lateS = 90 * acts.indexOf(next);
            double startS = 100 + ChronoUnit.SECONDS.between(act.slotStart(), next.slotStart()) + lateS;
            happens(new LiveEvent.NoteMade(startS - 60, "The wind has turned."));
            fly(next, startS, 1.02);
        }
        DemoDebrief before = new DemoDebrief(loaded);
        before.happens(opened());
        before.fly(act, 160, 0.97);
        views.put("debrief", view(act, new OtherDay("the day before", before.debrief(), before.hour(act), List.of())));
        return views;
    }

    private LiveEvent opened() {
        return new ShowEvent.ShowOpened(
                0,
                loaded.show().title(),
                loaded.show().acts().stream().map(Act::id).toList());
    }

    private void fly(Act act, double startS, double longer) {
        Variant variant = act.variants().get(0);
        Prediction prediction = loaded.prediction(act.id(), variant.name()).orElse(null);
        if (prediction == null) {
            return;
        }
        happens(new FlightEvent.ActChosen(
                startS - 50,
                act.id(),
                variant.name(),
                act.inOrder(variant).stream().map(Figure::id).toList(),
                startS));
        happens(new FlightEvent.ActStarted(startS));
        List<FigureTime> figures = prediction.times().figures();
        List<Placed> placed = loaded.plan(act, prediction.times()).placed();
        double atS = startS;
        for (int i = 0; i < figures.size(); i++) {
            FigureTime figure = figures.get(i);
            double lastsS = figure.durationS() * (i == 4 ? longer * 1.4 : longer);
            for (int k = 0; k < placed.size(); k++) {
                Placed one = placed.get(k);
                boolean here = one.startS() >= figure.startS() && one.startS() < figure.endS();
                if (here && k % 4 != 3) {
                    double saidAtS = Math.min(atS + lastsS, atS + one.endS() - figure.startS());
                    happens(new TalkEvent.RemarkStarted(
                            saidAtS - one.endS() + one.startS(), one.remarkId(), RemarkForm.FULL));
                    happens(new TalkEvent.RemarkSaid(saidAtS, one.remarkId(), RemarkForm.FULL));
                }
            }
            atS += lastsS;
            if (i + 1 < figures.size()) {
                happens(new FlightEvent.Stepped(atS));
            }
        }
        happens(new FlightEvent.ActEnded(atS));
    }

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved moved) {
            state = moved.state();
        }
    }

    private DebriefView view(Act act, @Nullable OtherDay other) {
        return DebriefPresenter.view(debrief(), hour(act), other);
    }

    private Debrief debrief() {
        return Debrief.of(loaded.show(), state, loaded.debriefSources(Instant.MAX, (id, variant) -> List.of()));
    }

    /** The first act's slot begins 100 s into the session. */
    private DoubleFunction<LocalTime> hour(Act act) {
        LocalTime zero = act.slotStart().minusSeconds(100);
        return atS -> zero.plusNanos(Math.round(atS * 1e9));
    }
}
