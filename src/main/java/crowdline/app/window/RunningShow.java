package crowdline.app.window;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.CommandEvents;
import crowdline.console.live.Handles;
import crowdline.console.live.IncidentPresenter;
import crowdline.console.live.LiveMoment;
import crowdline.console.live.LivePresenter;
import crowdline.console.live.LiveView;
import crowdline.follow.FollowPlan;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.SlotTime;
import crowdline.live.now.LiveNow;
import crowdline.live.now.PlanAhead;
import crowdline.live.now.PlanAnchor;
import crowdline.live.now.TakenAsSaid;
import crowdline.live.state.LiveState;
import crowdline.live.state.TalkEnd;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.Prediction;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Plan;
import crowdline.patter.Planner;
import crowdline.running.AircraftSource;
import crowdline.running.FollowThread;
import crowdline.running.LiveDesk;
import crowdline.running.NamedThread;
import crowdline.show.Act;
import crowdline.show.Figure;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.storage.journal.JournalOpening;
import crowdline.telemetry.LocalFrame;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.DoubleFunction;

/**
 * One show being run: the desk, what is planned to be said, and the screen's view of both. The plan is made anew on a
 * thread of its own at every event and every second, and handed over whole.
 */
final class RunningShow implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(RunningShow.class.getName());
    private static final long REPLAN_MS = 1000;
    /** What was told is not told again while it is on its way, seconds. */
    private static final double ON_ITS_WAY_S = 2;

    private volatile LoadedShow loaded;
    private final LiveDesk desk;
    private final LiveKeys keys;
    private volatile ShowLookup words;
    private volatile LivePresenter presenter;
    private volatile PlanAhead ahead;
    private final AircraftSource source;
    private final FollowThread aircraft;
    private final Planner planner = new Planner();
    private final InstantSource clock;
    private final AtomicBoolean asked = new AtomicBoolean();
    /** On the plan thread only: what keeps a plan from being made does so every second, and is logged once. */
    private boolean unplanned;

    private final ScheduledExecutorService planning = NamedThread.scheduled("plan");
    /** On the plan thread only. */
    private final TakenAsSaid aired = new TakenAsSaid();
    /** On the plan thread only: when it was last told that something left the screen. */
    private double leftS = Double.NEGATIVE_INFINITY;

    private volatile Plan plan = Plan.NOT_YET;

    /**
     * @param source where the aircraft's positions come from
     * @param clock the clock on the wall
     */
    RunningShow(LoadedShow loaded, JournalOpening opening, AircraftSource source, InstantSource clock) {
        this.source = source;
        this.loaded = loaded;
        this.clock = clock;
        words = loaded.words();
        presenter = new LivePresenter(words);
        ahead = loaded.planAhead();
        desk = new LiveDesk(opening, loaded.durations());
        keys = new LiveKeys(desk, () -> this.words);
        desk.onChange(snapshot -> replanSoon());
        aircraft = new FollowThread(desk, new LocalFrame(loaded.show().venue()), this::followPlan);
        source.to(aircraft::fix);
        if (!opening.resumed()) {
            Show show = loaded.show();
            desk.post(atS -> new ShowEvent.ShowOpened(
                    atS, show.title(), show.acts().stream().map(Act::id).toList()));
            show.acts().stream().findFirst().ifPresent(act -> desk.post(chosen(act)));
        }
        var unused = planning.scheduleWithFixedDelay(this::replan, 0, REPLAN_MS, TimeUnit.MILLISECONDS);
    }

    LoadedShow loaded() {
        return loaded;
    }

    /** Goes by other words or flights from now on; the act, its position and the journal go on as they are. */
    void take(LoadedShow other) {
        loaded = other;
        words = other.words();
        presenter = new LivePresenter(words);
        ahead = other.planAhead();
        desk.useDurations(other.durations());
        replanSoon();
    }

    LiveDesk desk() {
        return desk;
    }

    private Optional<FollowPlan> followPlan(LiveState state) {
        return loaded.prediction(state.actId(), state.variant())
                .filter(p -> p.flight().samples().size() > 1)
                .map(p -> FollowPlan.of(p.flight(), p.times()));
    }

    private void replanSoon() {
        if (!asked.getAndSet(true)) {
            planning.execute(this::replan);
        }
    }

    private void replan() {
        asked.set(false);
        try {
            LiveState state = desk.snapshot().state();
            LiveNow now = now();
            endTalk(state, now.nowS());
            Prediction prediction =
                    loaded.prediction(state.actId(), state.variant()).orElse(null);
            if (prediction != null) {
                aired.follow(state, plan, now.nowS());
                plan = planner.plan(
                        aired.request(ahead.request(state, now, prediction.times(), Optional.of(plan), aired.ids())));
            } else if (plan.equals(Plan.NOT_YET)) {
                plan = Plan.EMPTY;
            }
            unplanned = false;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            // The root of the thread: without a new plan the old one stays, and the show goes on.
            if (!unplanned) {
                unplanned = true;
                LOG.log(System.Logger.Level.ERROR, "What to say could not be planned", e);
            }
        }
    }

    /** Looks at the clock now, and waits until the desk and the aircraft have been seen to; where no clock wakes them. */
    void settle() throws ExecutionException, InterruptedException {
        desk.wake().get();
        aircraft.wake();
        desk.wake().get();
    }

    /** The same, and waits for a plan made anew. */
    void wake() throws ExecutionException, InterruptedException {
        settle();
        planning.submit(this::replan).get();
    }

    /** Writes down that what was taken has left the screen by itself. */
    private void endTalk(LiveState state, double nowS) {
        if (nowS - leftS >= ON_ITS_WAY_S) {
            TalkEnd.due(state, plan, words::time, nowS).ifPresent(left -> {
                leftS = nowS;
                var unused = desk.submit(left);
            });
        }
    }

    /** What can be read off it now. */
    LiveNow now() {
        return desk.now(PlanAnchor.ACT_START, clock.instant());
    }

    /** What the screen shows now. */
    LiveView view() {
        Instant wall = clock.instant();
        LiveMoment moment = new LiveMoment(
                desk.snapshot().state(),
                desk.now(PlanAnchor.ACT_START, wall),
                plan,
                LocalDateTime.ofInstant(wall, zone()),
                aircraft.tracking());
        return presenter.view(moment).withTold(keys.told());
    }

    /** The incident page as it was called for so many seconds ago. */
    IncidentView incident(double openS) {
        return IncidentPresenter.of(loaded.show().incident(), LocalTime.ofInstant(clock.instant(), zone()), openS);
    }

    /** Carries out a command, given while a view was shown. */
    void command(Command command, Handles handles) {
        LiveState state = desk.snapshot().state();
        switch (command) {
            case NEXT_ACT -> nextAct(state);
            case VARIANT -> nextVariant(state);
            case TAKE_BACK -> keys.takeBack();
            case BACK -> {
                List<String> withdrawn = words.remarkIds(state.actId(), state.figureId());
                keys.give(command, atS -> new FlightEvent.SteppedBack(atS, withdrawn));
            }
            default ->
                CommandEvents.refusal(command, state, handles)
                        .ifPresentOrElse(
                                why -> keys.refuse(command, why),
                                () -> CommandEvents.of(command, state, handles)
                                        .ifPresent(event -> keys.give(command, event)));
        }
    }

    /** A command that cannot be carried out, and why. */
    void refuse(Command command, String why) {
        keys.refuse(command, why);
    }

    void resume() {
        desk.post(CommandEvents.resume());
    }

    private void nextAct(LiveState state) {
        Optional<Act> flown = Optional.ofNullable(state.actId()).flatMap(loaded.show()::act);
        if (state.course().inTheAir() && flown.isPresent()) {
            keys.refuse(
                    Command.NEXT_ACT, "\"" + flown.get().title() + "\" is still in the air: press E when it is over.");
            return;
        }
        state.nextActId()
                .flatMap(loaded.show()::act)
                .ifPresentOrElse(
                        act -> keys.give(Command.NEXT_ACT, chosen(act)),
                        () -> keys.refuse(Command.NEXT_ACT, "No act is left in the running order."));
    }

    private DoubleFunction<LiveEvent> chosen(Act act) {
        Variant variant = act.variantUnder(loaded.show().air().cloudBaseFt());
        SlotTime.OnClock slot = new SlotTime.OnClock(loaded.show().slotStart(act), zone());
        return atS -> new FlightEvent.ActChosen(atS, act.id(), variant.name(), ids(act, variant), null, slot);
    }

    private void nextVariant(LiveState state) {
        Act act = Optional.ofNullable(state.actId()).flatMap(loaded.show()::act).orElse(null);
        if (act == null) {
            keys.refuse(Command.VARIANT, "No act is chosen: press N for the next one.");
            return;
        }
        List<String> names = act.variants().stream().map(Variant::name).toList();
        if (names.size() == 1) {
            keys.refuse(Command.VARIANT, "This act has only one variant.");
            return;
        }
        int at = names.indexOf(state.variant());
        Variant next = act.variants().get((at + 1) % names.size());
        keys.give(Command.VARIANT, atS -> new FlightEvent.VariantChosen(atS, next.name(), ids(act, next)));
    }

    private static List<String> ids(Act act, Variant variant) {
        return act.inOrder(variant).stream().map(Figure::id).toList();
    }

    private ZoneId zone() {
        return loaded.show().venue().timeZone();
    }

    /** Says that the show is over, so that it is not gone on with next time. */
    void end() {
        try {
            var unused = desk.submit(new ShowEvent.ShowEnded(desk.nowS())).get(2, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            LOG.log(System.Logger.Level.WARNING, "The end of the show was not written down", e);
        }
    }

    /** Closes unless an act is in the air or the incident page is open; whether it closed. */
    boolean leave() {
        if (!desk.leave()) {
            return false;
        }
        close();
        return true;
    }

    @Override
    public void close() {
        source.to(fix -> {});
        aircraft.close();
        planning.shutdownNow();
        desk.close();
    }
}
