package crowdline.practice;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.live.state.Step;
import crowdline.loaded.LoadedShow;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.timing.FigureTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Presses the keys of a practice: with its eyes on the sky, some seconds late, or by the list and the clock alone. */
final class Robot {
    private final LoadedShow show;
    private final Act act;
    private final Variant variant;
    private final PracticeFlight flight;
    private final List<LiveEvent> events = new ArrayList<>();
    private LiveState state = LiveState.initial();

    private Robot(LoadedShow show, Act act, Variant variant, PracticeFlight flight) {
        this.show = show;
        this.act = act;
        this.variant = variant;
        this.flight = flight;
        press(new ShowEvent.ShowOpened(0, "Practice", List.of(act.id())));
        press(new FlightEvent.ActChosen(0, act.id(), variant.name(), variant.order(), Timeline.SLOT_S));
    }

    /** What somebody presses who looks at the sky and needs this long, seconds. */
    static List<LiveEvent> looking(LoadedShow show, Act act, Variant variant, PracticeFlight flight, double needsS) {
        Robot robot = new Robot(show, act, variant, flight);
        robot.look(needsS);
        return robot.events;
    }

    /** What somebody presses who begins with the slot and goes by the times of the plan. */
    static List<LiveEvent> reading(LoadedShow show, Act act, Variant variant, PracticeFlight flight) {
        Robot robot = new Robot(show, act, variant, flight);
        robot.read();
        return robot.events;
    }

    private boolean press(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved moved) {
            state = moved.state();
            events.add(event);
            return true;
        }
        return false;
    }

    private void look(double needsS) {
        for (Piece piece : flight.pieces()) {
            double atS = piece.fromS() + needsS;
            switch (piece.kind()) {
                case FIGURE -> goTo(piece.figureId(), atS);
                case WAY -> {}
                case UNPLANNED -> press(new FlightEvent.WentOffPlan(atS));
                case HOLD -> press(new FlightEvent.Held(atS));
                case AWAY -> {
                    if (flight.change(Change.Kind.INCIDENT).isPresent()) {
                        press(new IncidentEvent.IncidentOpened(atS));
                    } else {
                        press(new FlightEvent.ActEnded(atS));
                    }
                }
            }
        }
        say(act.remarks(), flight.endS());
    }

    /** Steps, drops and swaps until the screen is at a figure. */
    private void goTo(String figureId, double atS) {
        if (state.phase() instanceof Phase.Waiting) {
            press(new FlightEvent.ActStarted(atS));
        }
        if (state.phase() instanceof Phase.Held) {
            press(new FlightEvent.Released(atS));
        }
        int index = state.course().figureIds().indexOf(figureId);
        if (index < state.course().position() || state.course().droppedIds().contains(figureId)) {
            press(new FlightEvent.WentOffPlan(atS));
            return;
        }
        if (state.phase() instanceof Phase.OffPlan) {
            press(new FlightEvent.CameBack(atS, index));
        }
        while (!figureId.equals(state.figureId())) {
            boolean isNext = state.course().nextIndex().orElse(-1) == index;
            boolean way = state.course().nextIndex().stream()
                    .anyMatch(i -> act.figure(state.course().figureIds().get(i))
                            .map(Figure::transit)
                            .orElse(false));
            if (!((isNext || way) ? press(new FlightEvent.Stepped(atS)) : press(new FlightEvent.NextDropped(atS)))) {
                break;
            }
        }
        say(act.figure(figureId).map(Figure::remarks).orElse(List.of()), atS);
    }

    private void read() {
        double startS = Timeline.SLOT_S;
        for (FigureTime time :
                show.prediction(act.id(), variant.name()).orElseThrow().times().figures()) {
            double atS = startS + time.startS();
            if (!press(new FlightEvent.ActStarted(atS))) {
                press(new FlightEvent.Stepped(atS));
            }
            say(act.figure(time.figureId()).map(Figure::remarks).orElse(List.of()), atS);
        }
    }

    private void say(List<Remark> remarks, double atS) {
        for (RemarkKind kind : List.of(RemarkKind.CALL, RemarkKind.DUTY)) {
            Optional<Remark> said =
                    remarks.stream().filter(r -> r.kind() == kind).findFirst();
            said.ifPresent(r -> press(new TalkEvent.RemarkSaid(atS, r.id(), RemarkForm.FULL)));
        }
    }
}
