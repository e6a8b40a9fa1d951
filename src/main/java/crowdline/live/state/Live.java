package crowdline.live.state;

import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.HeardEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import java.util.ArrayList;
import java.util.List;

/** The state machine of the running show: the only place where an event becomes the next state. */
public final class Live {
    /**
     * A step by hand less than this many seconds after the clock or the aircraft marked a boundary means the same boundary.
     * Tuned: longer than a person's reaction to what they see in the sky, shorter than a figure.
     */
    public static final double SAME_BOUNDARY_S = 1.0;

    private Live() {}

    /** What the event does to the state; it never throws. */
    public static Step next(LiveState state, LiveEvent event) {
        if (state.showTitle() == null && !(event instanceof ShowEvent.ShowOpened)) {
            return new Step.Refused("No show is open: press Ctrl+O to open one.");
        }
        if (event instanceof LiveEvent.NoteMade note) {
            List<Note> notes = new ArrayList<>(state.notes());
            notes.add(new Note(note.atS(), note.text(), state.actId(), state.figureId()));
            LiveState noted = state.withNotes(notes);
            // One that was made with its words, as journals of the first version have it, was never taken back.
            return new Step.Moved(
                    note.text().isEmpty() ? noted.plusTakeBack(TakeBack.ofNotes(note, state.notes())) : noted);
        }
        if (event instanceof LiveEvent.NoteWritten written) {
            return written(state, written.text());
        }
        if (event instanceof AnnouncementEvent announcement) {
            return announced(state, announcement);
        }
        if (event instanceof HeardEvent heard) {
            // No hand did it, so no hand need take it back.
            return new Step.Moved(state.withListened(state.listened().next(heard)));
        }
        if (event instanceof IncidentEvent incident) {
            return incident(state, incident);
        }
        if (state.incidentOpen()) {
            return new Step.Refused("The incident page is open: type RESUME to leave it.");
        }
        if (event instanceof LiveEvent.HandedOver over) {
            return new Step.Moved(state.withWhoseTurn(state.whoseTurn().handed(over.toOther()))
                    .plusTakeBack(TakeBack.ofTurn(over, state.whoseTurn())));
        }
        if (event instanceof ShowEvent show) {
            return ShowSteps.next(state, show);
        }
        if (event instanceof FlightEvent flight) {
            return flight(state, flight);
        }
        if (event instanceof TalkEvent talk) {
            Step step = TalkSteps.next(state, talk);
            return talk instanceof TalkEvent.RemarkStarted || !(step instanceof Step.Moved moved)
                    ? step
                    : new Step.Moved(moved.state()
                            .withWhoseTurn(moved.state().whoseTurn().settled()));
        }
        return undone(state, event.atS());
    }

    private static Step written(LiveState state, String text) {
        if (state.notes().isEmpty()) {
            return new Step.Refused("The note was taken back: press J to note this moment.");
        }
        List<Note> notes = new ArrayList<>(state.notes());
        Note newest = notes.remove(notes.size() - 1);
        notes.add(new Note(newest.atS(), text, newest.actId(), newest.figureId()));
        return new Step.Moved(state.withNotes(notes));
    }

    /** The organiser's words are there whatever goes on, the incident page too. */
    private static Step announced(LiveState state, AnnouncementEvent event) {
        LiveState next = state.withAnnounced(state.announced().next(event));
        return new Step.Moved(
                event instanceof AnnouncementEvent.AnnouncementRead
                        ? next.plusTakeBack(TakeBack.ofAnnounced(event, state.announced()))
                        : next);
    }

    private static Step flight(LiveState state, FlightEvent event) {
        if (event instanceof FlightEvent.ActChosen chosen
                && !state.runningOrder().contains(chosen.actId())) {
            return new Step.Refused(Refusals.NOT_IN_THE_ORDER);
        }
        if (event instanceof FlightEvent.ActChosen chosen && state.day().isCancelled(chosen.actId())) {
            return new Step.Refused("That act is cancelled: press R and bring it back first.");
        }
        Turn turn = ActSteps.next(state.course(), event);
        if (turn instanceof Turn.No no) {
            return new Step.Refused(no.reason());
        }
        if (turn instanceof Turn.Over) {
            return new Step.Refused(Refusals.actOver(state));
        }
        Turn.To to = (Turn.To) turn;
        LiveState moved = state.withCourse(to.course());
        if (event instanceof FlightEvent.AircraftBegan && state.course().inTheAir()) {
            return new Step.Moved(moved);
        }
        if (event instanceof FlightEvent.ClockAdvanced
                || event instanceof FlightEvent.AircraftSeen
                || event instanceof FlightEvent.AircraftStrayed
                || event instanceof FlightEvent.AircraftBegan) {
            return new Step.Moved(moved.withTakeBacks(
                    state.takeBacks().stream().map(TakeBack::overtaken).toList()));
        }
        if (event instanceof FlightEvent.AircraftLost || event instanceof FlightEvent.AircraftFound) {
            // No hand did it, so no hand need take it back.
            return new Step.Moved(moved);
        }
        if (event instanceof FlightEvent.ActChosen && state.actId() == null) {
            // Chosen for the commentator when the show was opened; before it there is nothing to go back to.
            return new Step.Moved(moved);
        }
        Talk talk = null;
        if (event instanceof FlightEvent.SteppedBack back && !back.remarkIds().isEmpty()) {
            // Its figure has not begun after all, so its words come again.
            talk = state.talk();
            moved = moved.withTalk(talk.without(back.remarkIds(), state::isOfThisRun));
        }
        // Whoever takes a start back has seen that the act has not begun.
        Course before =
                state.course().phase() instanceof Phase.Waiting && to.course().inTheAir()
                        ? state.course().withLead(state.course().lead().startTakenBack())
                        : state.course();
        return new Step.Moved(moved.plusTakeBack(new TakeBack(event, before, talk)));
    }

    private static Step incident(LiveState state, IncidentEvent event) {
        List<IncidentSpan> spans = new ArrayList<>(state.incidents());
        if (event instanceof IncidentEvent.IncidentOpened) {
            if (state.incidentOpen()) {
                return new Step.Refused("The incident page is already open.");
            }
            spans.add(new IncidentSpan(event.atS(), null));
            return new Step.Moved(state.withIncidents(spans)
                    .withCourse(FigureSteps.stopped(state.course(), event.atS()))
                    .withTalk(state.talk().cutShort(event.atS(), state.actId(), state.figureId()))
                    .withTakeBacks(List.of()));
        }
        if (!state.incidentOpen()) {
            return new Step.Refused("The incident page is not open.");
        }
        if (event instanceof IncidentEvent.IncidentClosed closed && !closed.confirmed()) {
            return new Step.Refused("The incident page is left only by typing RESUME.");
        }
        double openedAtS = spans.remove(spans.size() - 1).openedAtS();
        spans.add(new IncidentSpan(openedAtS, Math.max(openedAtS, event.atS())));
        return new Step.Moved(state.withIncidents(spans));
    }

    private static Step undone(LiveState state, double atS) {
        int count = state.takeBacks().size();
        if (count == 0) {
            return new Step.Refused("There is nothing to take back.");
        }
        TakeBack last = state.takeBacks().get(count - 1);
        if (!last.isPossible()) {
            return new Step.Refused(
                    "The act has moved on by itself since your last key: press Backspace to go back a figure.");
        }
        LiveState back = state.withTakeBacks(state.takeBacks().subList(0, count - 1));
        if (last.notes() != null) {
            back = back.withNotes(last.notes());
        }
        if (last.day() != null) {
            back = back.withDay(last.day());
        }
        if (last.whoseTurn() != null) {
            back = back.withWhoseTurn(last.whoseTurn());
        }
        if (last.announced() != null) {
            back = back.withAnnounced(last.announced());
        }
        if (last.course() != null) {
            back = back.withCourse(FigureSteps.confirmed(last.course(), atS));
        }
        return new Step.Moved(last.talk() == null ? back : back.withTalk(last.talk()));
    }
}
