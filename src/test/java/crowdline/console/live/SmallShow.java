package crowdline.console.live;

import crowdline.console.live.row.LiveMoment;
import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.LiveNow;
import crowdline.live.state.Durations;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Incident;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.ActSheet;
import crowdline.speech.pace.SpokenTime;
import crowdline.steer.Tracking;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** A made-up show of one act with three figures of ten seconds, and moments of it reached by events. */
public final class SmallShow {
    public static final Durations TEN_SECONDS = index -> 10;

    private SmallShow() {}

    /** One figure with a call, an explanation and a fact; one with a quiet; one plain. */
    public static Show show() {
        Figure loop = new Figure(
                "f1",
                "loop",
                "Loop",
                "Look at the top.",
                null,
                10.0,
                null,
                null,
                List.of(),
                List.of(
                        Remark.of("r-call-1", RemarkKind.CALL, "Now a loop."),
                        Remark.of(
                                "r-say-1",
                                RemarkKind.EXPLANATION,
                                "Up, over the top, and round, back to where it began."),
                        Remark.of("r-fact-1", RemarkKind.FACT, "It is two hundred metres high.")));
        Figure stall = new Figure(
                "f2",
                "stall turn",
                "Stall turn",
                "Look at the stop.",
                null,
                10.0,
                null,
                null,
                List.of(new Quiet(2, 8.0, "hear it fade")),
                List.of(Remark.of("r-call-2", RemarkKind.CALL, "And now it stops.")));
        Figure pass = new Figure("f3", "low pass", "Low pass", "Wave.", null, 10.0, null, null, List.of(), List.of());
        Act act = new Act(
                "a1",
                "The Calder display",
                "p1",
                "c200",
                LocalTime.of(14, 30),
                12,
                new Placing(0, 0, 500, 120, Placing.Heading.RIGHT),
                List.of(loop, stall, pass),
                List.of(
                        new Variant("full", 2000.0, List.of("f1", "f2", "f3")),
                        new Variant("flat", null, List.of("f3"))),
                List.of(Remark.of("r-fact-act", RemarkKind.FACT, "Rosa built it herself.")));
        return new Show(
                        "Marram Field Air Day",
                        LocalDate.of(2026, 6, 6),
                        new Venue("Marram Field", 52, 1, 30, 240, 230, ZoneId.of("UTC"), Venue.Limits.NONE),
                        DayAir.STANDARD,
                        List.of(airframe()),
                        List.of(new Performer("p1", "Rosa Vent", null, List.of())),
                        List.of(act),
                        List.of(Remark.of("r-fill", RemarkKind.FILLER, "The smoke is only paraffin.")))
                .withIncident(new Incident(
                        "the director, 2 May", List.of("Breathe."), List.of("The display has stopped."), List.of()));
    }

    private static Airframe airframe() {
        return new Airframe(
                "c200",
                "Calder 200",
                null,
                new Engine.Propeller(220, 2, 2600, Engine.Turns.CLOCKWISE, Engine.PropellerType.CONSTANT_SPEED),
                700,
                11,
                8,
                6.5,
                0.03,
                0.06,
                1.5,
                1.2,
                300,
                120,
                400,
                360,
                300,
                1.5,
                300,
                8,
                -6,
                200);
    }

    public static ShowLookup words() {
        return words(show());
    }

    /** The same with a duty, {@code r-duty}. */
    static ShowLookup wordsWithADuty() {
        Show show = show();
        List<Remark> remarks = new ArrayList<>(show.remarks());
        remarks.add(Remark.of("r-duty", RemarkKind.DUTY, "Please stay behind the rope."));
        return words(show.withActs(show.acts(), remarks));
    }

    /** The same with a low pass that is called a loop, as the first figure is. */
    public static ShowLookup wordsWithTwoLoops() {
        Show show = show();
        Act act = show.acts().get(0);
        List<Figure> figures = act.figures().stream()
                .map(f -> f.id().equals("f3")
                        ? new Figure("f3", "loop", "Loop", null, null, 10.0, null, null, List.of(), List.of())
                        : f)
                .toList();
        Act again = new Act(
                act.id(),
                act.title(),
                act.performer(),
                act.airframe(),
                act.slotStart(),
                act.slotMinutes(),
                act.entry(),
                figures,
                act.variants(),
                act.remarks());
        return words(show.withActs(List.of(again), show.remarks()));
    }

    /** The same with something to see 4 s and 8 s into every figure. */
    public static ShowLookup wordsWithMoments() {
        return new ShowLookup(
                show(),
                new Catalogue(List.of()),
                text -> new SpokenTime(4, 3.5, 4.5),
                (act, variant) -> ActSheet.NONE,
                (act, variant, figure) -> "",
                (act, variant, figure) -> new FigureMoments(List.of(
                        new Moment(MomentName.first(MomentKind.BEGINS), 0, false),
                        new Moment(MomentName.first(MomentKind.OVER_THE_TOP), 4, true),
                        new Moment(MomentName.first(MomentKind.PULLS_OUT), 8, false),
                        new Moment(MomentName.first(MomentKind.FLIES_OUT), 10, false))));
    }

    /** The same with a first figure that is only the way to the second. */
    static ShowLookup wordsWithATransit(String id) {
        Act act = show().acts().get(0);
        Figure way = new Figure(
                id, "reposition", "flying on", null, null, 10.0, null, null, null, true, List.of(), List.of());
        List<Figure> figures =
                act.figures().stream().map(f -> f.id().equals(id) ? way : f).toList();
        return words(show().withAct(act.withFigures(figures, act.remarks())));
    }

    /** The same with figures that a catalogue explains. */
    public static ShowLookup words(Catalogue catalogue) {
        return new ShowLookup(show(), catalogue, text -> new SpokenTime(4, 3.5, 4.5), (act, variant) -> ActSheet.NONE);
    }

    public static ShowLookup words(Show show) {
        return new ShowLookup(
                show, new Catalogue(List.of()), text -> new SpokenTime(4, 3.5, 4.5), (act, variant) -> ActSheet.NONE);
    }

    /** The same with a place to look for every figure. */
    static ShowLookup wordsWithSights() {
        return new ShowLookup(
                show(),
                new Catalogue(List.of()),
                text -> new SpokenTime(4, 3.5, 4.5),
                (act, variant) -> ActSheet.NONE,
                (act, variant, figure) -> "left of " + figure,
                ShowLookup.Seen.NOTHING);
    }

    public static LiveState after(LiveEvent... events) {
        LiveState state = LiveState.initial();
        state = step(state, new ShowEvent.ShowOpened(0, "Marram Field Air Day", List.of("a1")));
        state = step(state, new FlightEvent.ActChosen(0, "a1", "full", List.of("f1", "f2", "f3"), 100.0));
        for (LiveEvent event : events) {
            state = step(state, event);
        }
        return state;
    }

    private static LiveState step(LiveState state, LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved moved) {
            return moved.state();
        }
        throw new IllegalStateException(event + " was refused: " + Live.next(state, event));
    }

    public static LiveMoment moment(double nowS, Plan plan, LiveState state) {
        return moment(nowS, plan, state, LocalDateTime.of(2026, 6, 6, 14, 31, 5));
    }

    /** With the clock on the wall, at the venue. */
    public static LiveMoment moment(double nowS, Plan plan, LiveState state, LocalDateTime clock) {
        return new LiveMoment(
                state,
                LiveNow.of(state, TEN_SECONDS, nowS, clock.toInstant(ZoneOffset.UTC)),
                plan,
                clock,
                Tracking.NONE);
    }

    static Plan plan(Placed... placed) {
        return new Plan(List.of(placed), List.of(), 0, 0, true);
    }

    static Placed placed(String id, String figureId, RemarkKind kind, double startS) {
        return new Placed(id, figureId, kind, RemarkForm.FULL, startS, startS + 4, false);
    }
}
