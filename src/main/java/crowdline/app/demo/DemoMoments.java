package crowdline.app.demo;

import crowdline.console.live.LivePresenter;
import crowdline.console.live.LiveView;
import crowdline.console.live.SecondPresenter;
import crowdline.console.live.SecondView;
import crowdline.console.live.day.DutiesPresenter;
import crowdline.console.live.day.DutiesView;
import crowdline.console.live.day.OrderPresenter;
import crowdline.console.live.row.LiveMoment;
import crowdline.console.pictures.Pictures;
import crowdline.flight.FigureFlight;
import crowdline.flight.leg.Sample;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.now.DayNow;
import crowdline.live.now.LiveNow;
import crowdline.live.now.PlanAhead;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.loaded.DayShow;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.Prediction;
import crowdline.patter.Plan;
import crowdline.patter.Planner;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Spot;
import crowdline.steer.AircraftFollowing;
import crowdline.steer.Tracking;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Moments of a show's first act as the real state machine, planner and presenter have them, for pictures. */
final class DemoMoments {
    /** Duties of a day, said here and asked for in Prepare. */
    static final String SPONSOR = "This show is brought to you by the Fenmarsh Dairy.";

    static final String GATE = "The north gate is open for those who walk home.";

    private static final double BEFORE_S = 240;
    /** No pilot flies where a prediction has him. */
    private static final double ASTRAY_M = 25;

    private final LoadedShow loaded;
    private final Act act;
    private final Prediction prediction;
    private final LivePresenter presenter;
    private final PlanAhead ahead;
    private LiveState state = LiveState.initial();

    DemoMoments(LoadedShow loaded) {
        this.loaded = loaded;
        act = loaded.show().acts().get(0);
        Variant variant = act.variants().get(0);
        prediction = loaded.prediction(act.id(), variant.name()).orElseThrow();
        presenter = new LivePresenter(loaded.words());
        ahead = loaded.planAhead();
        happens(new ShowEvent.ShowOpened(
                0,
                loaded.show().title(),
                loaded.show().acts().stream().map(Act::id).toList()));
        happens(new FlightEvent.ActChosen(
                1,
                act.id(),
                variant.name(),
                act.inOrder(variant).stream().map(Figure::id).toList(),
                BEFORE_S));
    }

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved moved) {
            state = moved.state();
        } else {
            throw new IllegalStateException(event + " was refused");
        }
    }

    /** The views, each under the name of its picture. */
    Map<String, LiveView> views() {
        Map<String, LiveView> views = new LinkedHashMap<>();
        views.put("live-before", view(BEFORE_S - 95));
        happens(new FlightEvent.ActStarted(BEFORE_S));
        int flying = secondFlown();
        int figures = Math.min(flying + 3, prediction.times().figures().size());
        for (int i = 0; i < figures; i++) {
            if (i > 0) {
                happens(new FlightEvent.Stepped(at(i)));
            }
            if (i == flying) {
                views.put("live-flying", view(at(i) + 4));
            }
            List<Quiet> quiets = figure(i).quiets();
            if (!quiets.isEmpty() && !views.containsKey("live-quiet")) {
                views.put("live-quiet", view(at(i) + quiets.get(0).fromS() + 1));
            }
        }
        double last = at(figures - 1);
        happens(new FlightEvent.SourceChosen(last + 1, Source.CLOCK));
        views.put("live-by-clock", view(last + 9));
        happens(new FlightEvent.Held(last + 10));
        views.put("live-held", view(last + 14));
        happens(new FlightEvent.Released(last + 15));
        happens(new FlightEvent.WentOffPlan(last + 20));
        views.put("live-off-plan", view(last + 23));
        happens(new IncidentEvent.IncidentOpened(last + 25));
        views.put("live-incident", view(last + 60));
        happens(new IncidentEvent.IncidentClosed(last + 80, true));
        happens(new FlightEvent.ActEnded(last + 90));
        views.put("live-after", view(last + 95));
        views.put("live-by-aircraft", byAircraft(loaded));
        return views;
    }

    /** The second window in the second figure of the act, the turn handed over. */
    static SecondView second(LoadedShow loaded) {
        DemoMoments run = new DemoMoments(loaded);
        run.happens(new FlightEvent.ActStarted(BEFORE_S));
        run.happens(new FlightEvent.Stepped(run.at(1)));
        double nowS = run.at(1) + 5;
        run.happens(new LiveEvent.HandedOver(nowS, true));
        LiveMoment moment = run.moment(nowS, Tracking.NONE);
        return SecondPresenter.of(moment, run.presenter.view(moment), loaded.words(), null);
    }

    /** The running order of a day on which an act flies, the others are late, one is cancelled and one was put in. */
    static Pictures.Ordered ordered(LoadedShow loaded) {
        DemoMoments run = new DemoMoments(loaded);
        List<String> ids = run.state.runningOrder();
        run.happens(new FlightEvent.ActStarted(BEFORE_S));
        run.happens(new FlightEvent.Stepped(run.at(1)));
        double nowS = run.at(1) + 5;
        String last = ids.get(ids.size() - 1);
        run.happens(new ShowEvent.ActsMoved(nowS, ids.subList(1, ids.size()), 720));
        run.happens(new ShowEvent.ActCancelled(nowS, last));
        run.happens(new ShowEvent.ActAdded(nowS, "put-in", "A wave for Kim", 4, last));
        LiveView live = run.view(nowS);
        Show ofTheDay = DayShow.of(loaded.show(), run.state.day().added());
        LoadedShow put = loaded.with(ofTheDay);
        Instant wall = ofTheDay.slotStart(run.act)
                .atZone(ofTheDay.venue().timeZone())
                .toInstant()
                .plusMillis(Math.round((nowS - BEFORE_S) * 1000));
        DayNow day = DayNow.of(
                run.state,
                ofTheDay,
                act -> act.slotMinutes() * 60,
                LiveNow.of(run.state, put.durations().of(run.state), nowS, wall));
        return new Pictures.Ordered(
                live, OrderPresenter.of(day, ofTheDay.date(), put.words()), duties(run, loaded, ids, nowS, wall));
    }

    /** Duties as an organiser asks for them: one overdue, one due between acts, one to come, one said as often as asked. */
    private static DutiesView duties(DemoMoments run, LoadedShow loaded, List<String> ids, double nowS, Instant wall) {
        LocalTime past = loaded.show().acts().get(0).slotStart().minusMinutes(5);
        List<Remark> asked = List.of(
                duty("dairy", SPONSOR, new DutyTimes(4, 20.0, null, null, null, true)),
                duty("rope", "Please stay on your side of the rope.", new DutyTimes(1, null, past, null, null, true)),
                duty("gate", GATE, new DutyTimes(2, 15.0, null, null, null, false)),
                duty(
                        "tent",
                        "The pilots sign programmes at the tea tent.",
                        new DutyTimes(1, null, null, ids.get(0), null, false)),
                duty("water", "There is drinking water by the tower.", DutyTimes.ONCE));
        Show show = loaded.show().withActs(loaded.show().acts(), asked);
        run.happens(new TalkEvent.RemarkSaid(20, "water", RemarkForm.FULL));
        run.happens(new TalkEvent.RemarkShown(nowS - 4, "dairy", RemarkForm.FULL, nowS - 9));
        LiveNow now = LiveNow.of(run.state, loaded.durations().of(run.state), nowS, wall);
        return DutiesPresenter.of(run.state, now, loaded.with(show).words());
    }

    private static Remark duty(String id, String words, DutyTimes asked) {
        return Remark.of(id, RemarkKind.DUTY, words).asked(asked);
    }

    /** A moment of another run of the same act, led by the aircraft in the figure that takes it furthest from the crowd. */
    static LiveView byAircraft(LoadedShow loaded) {
        DemoMoments run = new DemoMoments(loaded);
        Sample furthest = run.prediction.flight().samples().stream()
                .max(Comparator.comparingDouble(s -> s.place().y()))
                .orElseThrow();
        run.happens(new FlightEvent.SourceChosen(2, Source.AIRCRAFT));
        run.happens(new FlightEvent.ActStarted(BEFORE_S));
        List<FigureFlight> figures = run.prediction.flight().figures();
        for (int i = 1; i < figures.size() && figures.get(i).startS() <= furthest.tS(); i++) {
            run.happens(new FlightEvent.Stepped(BEFORE_S + figures.get(i).startS()));
        }
        List<Spot> trail = run.prediction.flight().samples().stream()
                .filter(s -> s.tS() <= furthest.tS() && furthest.tS() - s.tS() < AircraftFollowing.TRAIL_S)
                .map(s -> new Spot(
                        s.place().x() + ASTRAY_M,
                        s.place().y() - ASTRAY_M,
                        s.place().z() + ASTRAY_M))
                .toList();
        Spot here = trail.get(trail.size() - 1);
        Spot before = trail.get(trail.size() - 2);
        Craft craft = Craft.read(
                here,
                Math.atan2(here.heightM() - before.heightM(), here.alongM() - before.alongM()),
                Math.atan2(here.awayM() - before.awayM(), here.alongM() - before.alongM()),
                trail,
                2);
        return run.view(BEFORE_S + furthest.tS(), new Tracking(0.94, 2.0, null, craft, false));
    }

    private Figure figure(int index) {
        return act.figure(prediction.times().figures().get(index).figureId()).orElseThrow();
    }

    /** The second of what the list has, beside the take-off: by then the act is well under way. */
    private int secondFlown() {
        int flown = 0;
        List<FigureFlight> figures = prediction.flight().figures();
        for (int i = 0; i < figures.size(); i++) {
            flown += figures.get(i).simulated() && !figure(i).transit() ? 1 : 0;
            if (flown == 2) {
                return i;
            }
        }
        return Math.min(3, figures.size() - 1);
    }

    private double at(int index) {
        return BEFORE_S + prediction.times().figures().get(index).startS();
    }

    private LiveView view(double nowS) {
        return view(nowS, Tracking.NONE);
    }

    private LiveView view(double nowS, Tracking tracking) {
        return presenter.view(moment(nowS, tracking));
    }

    private LiveMoment moment(double nowS, Tracking tracking) {
        LiveNow now = LiveNow.of(state, loaded.durations().of(state), nowS, Instant.EPOCH);
        // As the console does: planned a few seconds ago, then kept.
        LiveNow before = LiveNow.of(state, loaded.durations().of(state), nowS - 3, Instant.EPOCH);
        Plan plan = new Planner().plan(ahead.request(state, before, prediction.times(), Optional.empty()));
        LocalDateTime hour =
                loaded.show().slotStart(act).minusSeconds((long) BEFORE_S).plusNanos((long) (nowS * 1e9));
        return new LiveMoment(state, now, plan, hour, tracking);
    }
}
