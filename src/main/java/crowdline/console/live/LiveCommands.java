package crowdline.console.live;

import crowdline.console.keys.Command;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.live.state.Refusals;
import crowdline.loaded.ShowLookup;
import crowdline.running.ChosenAct;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.figure.RemarkForm;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What a command of the Live place means in the state and the view in which it was given: the only place that says so. */
public final class LiveCommands {
    private final ShowLookup show;
    private final LiveState state;
    private final Handles handles;

    private LiveCommands(ShowLookup show, LiveState state, Handles handles) {
        this.show = show;
        this.state = state;
        this.handles = handles;
    }

    /**
     * What a command means.
     *
     * @throws IllegalArgumentException if it is no command of Live
     */
    public static Meaning of(Command command, ShowLookup show, LiveState state, Handles handles) {
        return new LiveCommands(show, state, handles).meaning(command);
    }

    /** The event of having typed the word that leaves the incident page. */
    public static DoubleFunction<LiveEvent> resume() {
        return atS -> new IncidentEvent.IncidentClosed(atS, true);
    }

    /** What putting in an act means; see {@link OrderCommands#putIn}. */
    public static Meaning putIn(ShowLookup show, LiveState state, String words, @Nullable String afterId) {
        return new OrderCommands(show, state).putIn(words, afterId);
    }

    private Meaning meaning(Command command) {
        Phase phase = state.phase();
        return switch (command) {
            case NEXT -> next(phase);
            case BACK -> {
                List<String> withdrawn = show.remarkIds(state.actId(), state.figureId());
                yield happens(atS -> new FlightEvent.SteppedBack(atS, withdrawn));
            }
            case HOLD -> happens(phase instanceof Phase.Held ? FlightEvent.Released::new : FlightEvent.Held::new);
            case DROP -> happens(FlightEvent.NextDropped::new);
            case UNDROP -> happens(FlightEvent.DropUndone::new);
            case SWAP -> happens(FlightEvent.NextSwapped::new);
            case OFF_PLAN -> phase instanceof Phase.OffPlan ? next(phase) : happens(FlightEvent.WentOffPlan::new);
            case SAID -> said();
            case NOT_SAID ->
                with(
                        handles.chosenDutyId() == null ? handles.sayId() : handles.chosenDutyId(),
                        "No remark is on the screen to be marked.",
                        id -> atS -> new TalkEvent.RemarkSkipped(atS, id));
            case FILLER ->
                with(
                        handles.fillerId(),
                        "No other filler is left.",
                        id -> atS -> new TalkEvent.FillerTaken(atS, id, RemarkForm.FULL));
            case FACT_1 -> fact(0, "No fact is offered now.");
            case FACT_2 -> fact(1, "There is no such fact now.");
            case FACT_3 -> fact(2, "There is no such fact now.");
            case BY_HAND -> happens(atS -> new FlightEvent.SourceChosen(atS, Source.HAND));
            case BY_CLOCK -> happens(atS -> new FlightEvent.SourceChosen(atS, Source.CLOCK));
            case BY_AIRCRAFT -> happens(atS -> new FlightEvent.SourceChosen(atS, Source.AIRCRAFT));
            case NEXT_ACT -> nextAct();
            case VARIANT -> nextVariant();
            case END_ACT -> happens(FlightEvent.ActEnded::new);
            case JOT -> happens(atS -> new LiveEvent.NoteMade(atS, ""));
            // The place goes to where it is asked; nothing happens in the show.
            case ASK_IN_LIVE -> new Meaning.Nothing("The Glossary asks what was seen.");
            case HAND_OVER -> happens(atS -> new LiveEvent.HandedOver(atS, !handles.othersTurn()));
            case LOOK_UP -> new Meaning.Nothing("The place shows what is looked up.");
            case ANNOUNCE -> new Meaning.Nothing(AnnouncementPresenter.WITHOUT);
            case ORDER, ORDER_UP, ORDER_DOWN, PUT_IN_ACT -> new Meaning.Nothing("The place shows the running order.");
            case DUTIES -> new Meaning.Nothing("The place shows the duties of the day.");
            case ALL_LATER,
                    ALL_EARLIER,
                    ALL_MUCH_LATER,
                    ALL_MUCH_EARLIER,
                    ONE_LATER,
                    ONE_EARLIER,
                    ACT_UP,
                    ACT_DOWN,
                    CANCEL_ACT,
                    CHOOSE_ACT -> new OrderCommands(show, state).meaning(command, handles.chosenActId());
            case TAKE_BACK -> new Meaning.TakenBack();
            case INCIDENT, INCIDENT_IN_LIVE ->
                state.incidentOpen()
                        ? new Meaning.Nothing("The incident page is open.")
                        : happens(IncidentEvent.IncidentOpened::new);
            default -> throw new IllegalArgumentException(command + " is no command of Live");
        };
    }

    static Meaning happens(DoubleFunction<? extends LiveEvent> event) {
        return new Meaning.Happens(event);
    }

    private static Meaning with(
            @Nullable String id, String without, Function<String, DoubleFunction<? extends LiveEvent>> event) {
        return id == null ? new Meaning.Nothing(without) : happens(event.apply(id));
    }

    private Meaning next(Phase phase) {
        if (phase instanceof Phase.Waiting) {
            return happens(FlightEvent.ActStarted::new);
        }
        Integer index = handles.nextIndex();
        if (phase instanceof Phase.OffPlan) {
            return index == null
                    ? new Meaning.Nothing("The plan has no more figures: press E when the act is over.")
                    : happens(atS -> new FlightEvent.CameBack(atS, index));
        }
        return happens(FlightEvent.Stepped::new);
    }

    /**
     * A duty that is chosen in their list was said, whatever is on the screen. Else refused while the remark on the screen waits: pressed twice, or late, it would take the one after it for said, and
     * nobody would say that any more.
     */
    private Meaning said() {
        String duty = handles.chosenDutyId();
        if (duty != null) {
            return happens(atS -> new TalkEvent.RemarkSaid(atS, duty, RemarkForm.FULL));
        }
        if (handles.sayId() != null && handles.sayWaits()) {
            return new Meaning.Nothing("This remark is not due yet, so nothing was marked: press X to leave it out.");
        }
        RemarkForm form = handles.sayShort() ? RemarkForm.SHORT : RemarkForm.FULL;
        return with(
                handles.sayId(),
                "No remark is on the screen to be marked.",
                id -> atS -> new TalkEvent.RemarkSaid(atS, id, form));
    }

    private Meaning fact(int place, String without) {
        String id = place < handles.factIds().size() ? handles.factIds().get(place) : null;
        return with(id, without, fact -> atS -> new TalkEvent.RemarkStarted(atS, fact, RemarkForm.FULL));
    }

    private Meaning nextAct() {
        Optional<Act> flown = show.act(state.actId());
        if (state.course().inTheAir() && flown.isPresent()) {
            return new Meaning.Nothing("\"" + flown.get().title() + "\" is still in the air: press E when it is over.");
        }
        return state.nextActId()
                .flatMap(show::act)
                .<Meaning>map(act -> happens(ChosenAct.of(show.show(), act)))
                .orElseGet(() -> new Meaning.Nothing("There are no more acts to come: " + Refusals.FLY_AGAIN));
    }

    private Meaning nextVariant() {
        Act act = show.act(state.actId()).orElse(null);
        if (act == null) {
            return new Meaning.Nothing(Refusals.NO_ACT_CHOSEN);
        }
        List<String> names = act.variants().stream().map(Variant::name).toList();
        if (names.size() == 1) {
            return new Meaning.Nothing("This act has only one variant.");
        }
        int at = names.indexOf(state.variant());
        return happens(ChosenAct.inVariant(act, act.variants().get((at + 1) % names.size())));
    }
}
