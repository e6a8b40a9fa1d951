package crowdline.console.live;

import crowdline.console.keys.Command;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.RemarkForm;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** What a command of the Live place means in the state and the view in which it was given. */
public final class CommandEvents {
    private CommandEvents() {}

    /**
     * The event to post, made for a time; empty if the command means nothing here, or needs what only the program knows, as
     * {@link Command#NEXT_ACT} needs the show.
     */
    public static Optional<DoubleFunction<LiveEvent>> of(Command command, LiveState state, Handles handles) {
        Phase phase = state.phase();
        return switch (command) {
            case NEXT -> next(phase, handles);
            case BACK -> Optional.of(atS -> new FlightEvent.SteppedBack(atS));
            case HOLD -> Optional.of(phase instanceof Phase.Held ? FlightEvent.Released::new : FlightEvent.Held::new);
            case DROP -> Optional.of(FlightEvent.NextDropped::new);
            case UNDROP -> Optional.of(FlightEvent.DropUndone::new);
            case SWAP -> Optional.of(FlightEvent.NextSwapped::new);
            case OFF_PLAN ->
                phase instanceof Phase.OffPlan ? next(phase, handles) : Optional.of(FlightEvent.WentOffPlan::new);
            case SAID -> said(handles);
            case NOT_SAID -> {
                String id = handles.sayId();
                yield id == null ? Optional.empty() : Optional.of(atS -> new TalkEvent.RemarkSkipped(atS, id));
            }
            case FILLER -> {
                String id = handles.fillerId();
                yield id == null
                        ? Optional.empty()
                        : Optional.of(atS -> new TalkEvent.FillerTaken(atS, id, RemarkForm.FULL));
            }
            case FACT_1 -> fact(handles, 0);
            case FACT_2 -> fact(handles, 1);
            case FACT_3 -> fact(handles, 2);
            case BY_HAND -> Optional.of(atS -> new FlightEvent.SourceChosen(atS, Source.HAND));
            case BY_CLOCK -> Optional.of(atS -> new FlightEvent.SourceChosen(atS, Source.CLOCK));
            case BY_AIRCRAFT -> Optional.of(atS -> new FlightEvent.SourceChosen(atS, Source.AIRCRAFT));
            case END_ACT -> Optional.of(FlightEvent.ActEnded::new);
            case TAKE_BACK -> Optional.of(LiveEvent.Undone::new);
            case INCIDENT -> state.incidentOpen() ? Optional.empty() : Optional.of(IncidentEvent.IncidentOpened::new);
            default -> Optional.empty();
        };
    }

    /**
     * Why a command does nothing now, in one sentence, if it does nothing. S is refused while the remark on the screen
     * waits: pressed twice, or late, it would take the one after it for said, and nobody would say that any more.
     */
    public static Optional<String> refusal(Command command, LiveState state, Handles handles) {
        if (command == Command.SAID && handles.sayId() != null && handles.sayWaits()) {
            return Optional.of("This remark is not due yet, so nothing was marked: press X to leave it out.");
        }
        if (command == Command.INCIDENT || of(command, state, handles).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(
                switch (command) {
                    case SAID, NOT_SAID -> "No remark is on the screen to be marked.";
                    case FILLER -> "No filler is left.";
                    case FACT_1 -> "No fact is offered now.";
                    case FACT_2, FACT_3 -> "There is no such fact now.";
                    case NEXT, OFF_PLAN -> "No figure of the plan is left: press E when the act is over.";
                    default -> "That key does nothing now.";
                });
    }

    /** The event of having typed the word that leaves the incident page. */
    public static DoubleFunction<LiveEvent> resume() {
        return atS -> new IncidentEvent.IncidentClosed(atS, true);
    }

    private static Optional<DoubleFunction<LiveEvent>> next(Phase phase, Handles handles) {
        if (phase instanceof Phase.Waiting) {
            return Optional.of(FlightEvent.ActStarted::new);
        }
        Integer index = handles.nextIndex();
        if (phase instanceof Phase.OffPlan) {
            return index == null ? Optional.empty() : Optional.of(atS -> new FlightEvent.CameBack(atS, index));
        }
        return Optional.of(FlightEvent.Stepped::new);
    }

    private static Optional<DoubleFunction<LiveEvent>> said(Handles handles) {
        String id = handles.sayId();
        RemarkForm form = handles.sayShort() ? RemarkForm.SHORT : RemarkForm.FULL;
        return id == null ? Optional.empty() : Optional.of(atS -> new TalkEvent.RemarkSaid(atS, id, form));
    }

    private static Optional<DoubleFunction<LiveEvent>> fact(Handles handles, int place) {
        if (place >= handles.factIds().size()) {
            return Optional.empty();
        }
        String id = handles.factIds().get(place);
        return Optional.of(atS -> new TalkEvent.RemarkStarted(atS, id, RemarkForm.FULL));
    }
}
