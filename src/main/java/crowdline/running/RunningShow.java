package crowdline.running;

import crowdline.follow.FollowPlan;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.now.LiveNow;
import crowdline.live.now.PlanAhead;
import crowdline.live.now.TakenAsSaid;
import crowdline.live.state.ActDurations;
import crowdline.live.state.Day;
import crowdline.live.state.LiveState;
import crowdline.live.state.TalkEnd;
import crowdline.loaded.Finder;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.Prediction;
import crowdline.patter.Carried;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Planner;
import crowdline.patter.Slot;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.storage.journal.JournalOpening;
import crowdline.storage.show.TermsFile;
import crowdline.telemetry.LocalFrame;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One show being run: the desk, what is planned to be said, and what the aircraft does. The plan is made anew on a thread of
 * its own at every event and every second, and handed over whole. What a screen needs of all this is one {@link Scene}.
 */
public final class RunningShow implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(RunningShow.class.getName());
    private static final long REPLAN_MS = 1000;
    /** What was told is not told again while it is on its way, seconds. */
    private static final double ON_ITS_WAY_S = 2;

    private volatile LoadedShow loaded;
    /** The same with the acts that were put in on the day. */
    private volatile LoadedShow ofTheDay;

    private final LiveDesk desk;
    private final LiveKeys keys;
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
    /** On the plan thread only: the figures as they were when the plan was made last. */
    private List<Slot> slots = List.of();
    /** On the plan thread only: whether nobody knew then when the next of them begins, as while an act is awaited, or on hold. */
    private boolean assumed;
    /** True as well for who runs a show without a screen. */
    private volatile boolean inSight = true;
    /** On the plan thread only: when it was last told that something left the screen. */
    private double leftS = Double.NEGATIVE_INFINITY;

    private final AtomicReference<Scene> scene;
    private volatile Finder finder = Finder.NOTHING;

    /**
     * @param source where the aircraft's positions come from
     * @param clock the clock on the wall
     */
    public RunningShow(LoadedShow loaded, JournalOpening opening, AircraftSource source, InstantSource clock) {
        this.source = source;
        this.loaded = loaded;
        this.clock = clock;
        ofTheDay = loaded.onTheDay(opening.state().day().added());
        ahead = ofTheDay.planAhead();
        desk = new LiveDesk(opening, ofTheDay.durations());
        scene = new AtomicReference<>(Scene.of(ofTheDay.words(), desk.snapshot(), guarded(ofTheDay)));
        desk.onChange(snapshot -> {
            if (!snapshot.state().day().added().equals(scene().state().day().added())) {
                use(this.loaded.onTheDay(snapshot.state().day().added()));
            }
            scene.updateAndGet(s -> s.with(snapshot));
            replanSoon();
        });
        // What was published before anybody listened.
        scene.updateAndGet(s -> s.with(desk.snapshot()));
        keys = new LiveKeys(desk, told -> scene.updateAndGet(s -> s.with(told, desk.nowS())));
        aircraft = new FollowThread(
                desk,
                frame(loaded.show().venue()),
                this::followPlan,
                tracking -> scene.updateAndGet(s -> s.with(tracking)));
        source.to(aircraft::fix, () -> loaded.show().venue().notPlaced().orElseGet(aircraft::elsewhere));
        Show show = loaded.show();
        if (!opening.resumed() || hasOtherActs(show, desk.snapshot().state().day())) {
            desk.post(atS -> new ShowEvent.ShowOpened(
                    atS, show.title(), show.acts().stream().map(Act::id).toList()));
        }
        if (!opening.resumed()) {
            show.acts().stream().findFirst().ifPresent(act -> desk.post(ChosenAct.of(show, act)));
        }
        var unused = planning.scheduleWithFixedDelay(this::replan, 0, REPLAN_MS, TimeUnit.MILLISECONDS);
        lookThrough(ofTheDay);
    }

    /** Whether its file has got or lost acts since the session knew of them, apart from those put in on the day. */
    private static boolean hasOtherActs(Show show, Day day) {
        Set<String> known = new HashSet<>(day.order());
        day.added().forEach(act -> known.remove(act.id()));
        return !known.equals(show.acts().stream().map(Act::id).collect(Collectors.toSet()));
    }

    /** Null where positions cannot be placed in the display. */
    private static @Nullable LocalFrame frame(Venue venue) {
        return venue.notPlaced().isPresent() ? null : new LocalFrame(venue);
    }

    /** The show as its file has it. */
    public LoadedShow loaded() {
        return loaded;
    }

    /** The show as it is flown: with the acts that were put in on the day, which the file does not have. */
    public LoadedShow ofTheDay() {
        return ofTheDay;
    }

    /** Goes by other words or flights from now on; the act, its position and the journal go on as they are. */
    public void take(LoadedShow other) {
        loaded = other;
        use(other.onTheDay(desk.snapshot().state().day().added()));
    }

    private void use(LoadedShow other) {
        ofTheDay = other;
        ahead = other.planAhead();
        scene.updateAndGet(s -> s.with(other.words(), guarded(other)));
        desk.useDurations(other.durations());
        lookThrough(other);
        replanSoon();
    }

    /** Chooses the act that is next once more, as the show has it now; the first if there is no such act any more. */
    public void chooseAnew() {
        LiveState state = desk.snapshot().state();
        Show show = ofTheDay.show();
        Optional<Act> known = Optional.ofNullable(state.actId()).flatMap(show::act);
        if (known.isEmpty()) {
            show.acts().stream().findFirst().ifPresent(act -> desk.post(ChosenAct.of(show, act)));
        } else if (state.course().isWaiting()) {
            Act act = known.get();
            desk.post(ChosenAct.of(show, act));
            String variant = state.variant();
            if (variant != null) {
                act.variant(variant).ifPresent(v -> desk.post(ChosenAct.inVariant(act, v)));
            }
        }
    }

    /** Finds anything of the day; nothing yet for a moment after the show was begun or has changed. */
    public Finder finder() {
        return finder;
    }

    private void lookThrough(LoadedShow of) {
        planning.execute(() -> finder = Finder.of(of.show(), of.catalogue(), TermsFile.shipped()));
        planning.execute(of::sketch);
    }

    public LiveDesk desk() {
        return desk;
    }

    private Optional<FollowPlan> followPlan(LiveState state) {
        return ofTheDay.prediction(state.actId(), state.variant())
                .filter(p -> p.flight().samples().size() > 1)
                .map(p -> FollowPlan.of(p.flight(), p.times()));
    }

    private void replanSoon() {
        if (!asked.getAndSet(true)) {
            planning.execute(this::replanIfAsked);
        }
    }

    /** Once for all that asked before it. */
    private void replanIfAsked() {
        if (asked.get()) {
            replan();
        }
    }

    private void replan() {
        asked.set(false);
        try {
            LiveState state = desk.snapshot().state();
            LiveNow now = now();
            endTalk(state, now.nowS());
            Plan before = scene().plan();
            Prediction prediction =
                    ofTheDay.prediction(state.actId(), state.variant()).orElse(null);
            if (prediction != null) {
                if (inSight) {
                    aired.follow(state, before, now.nowS(), ahead::isOfTheDay);
                } else {
                    aired.outOfSight(state);
                }
                for (TalkEvent.RemarkShown shown : aired.toWriteDown(state, now.nowS())) {
                    var unused = desk.submit(shown);
                }
                PlanRequest request = ahead.request(
                        state,
                        now,
                        prediction.times(),
                        Optional.of(before),
                        aired.ids(),
                        scene().tracking().behindS(now.figure(), now.nowS()));
                Plan next = planner.plan(aired.request(
                        assumed ? request.after(Carried.of(before, slots, request.slots(), now.nowS())) : request));
                slots = request.slots();
                assumed = now.figure() == null || now.figure().held();
                scene.updateAndGet(s -> s.with(next));
            } else if (before.equals(Plan.NOT_YET)) {
                scene.updateAndGet(s -> s.with(Plan.EMPTY));
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
    public void settle() throws ExecutionException, InterruptedException {
        desk.wake().get();
        aircraft.wake();
        desk.wake().get();
    }

    /** The same, and waits for a plan made anew. */
    public void wake() throws ExecutionException, InterruptedException {
        settle();
        asked.set(true);
        planning.submit(this::replanIfAsked).get();
    }

    /** Writes down that what was taken has left the screen by itself. */
    private void endTalk(LiveState state, double nowS) {
        if (nowS - leftS >= ON_ITS_WAY_S) {
            TalkEnd.due(state, scene().plan(), scene().lookup()::time, nowS).ifPresent(left -> {
                leftS = nowS;
                var unused = desk.submit(left);
            });
        }
    }

    /** What can be read off it now. */
    public LiveNow now() {
        return desk.now(clock.instant());
    }

    /** Everything a screen needs of it, as it is now; from any thread, at once. */
    public Scene scene() {
        return Objects.requireNonNull(scene.get());
    }

    /** Whether what is planned to be said is on a screen: what nobody can read is not taken to be said. */
    public void inSight(boolean now) {
        inSight = now;
    }

    /** The clock on the wall, at the venue. */
    public LocalDateTime atVenue(Instant wall) {
        return LocalDateTime.ofInstant(wall, loaded.show().venue().timeZone());
    }

    /** The clock on the wall. */
    public Instant wall() {
        return clock.instant();
    }

    /** What its keys do. */
    public LiveKeys keys() {
        return keys;
    }

    private static ActDurations guarded(LoadedShow loaded) {
        return new GuardedDurations(loaded.durations());
    }

    /** Says that the show is over, so that it is not gone on with next time. */
    public void end() {
        try {
            var unused = desk.submit(new ShowEvent.ShowEnded(desk.nowS())).get(2, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException | TimeoutException e) {
            LOG.log(System.Logger.Level.WARNING, "The end of the show was not written down", e);
        }
    }

    /** Closes unless an act is in the air or the incident page is open; whether it closed. */
    public boolean leave() {
        if (!desk.leave()) {
            return false;
        }
        close();
        return true;
    }

    @Override
    public void close() {
        source.to(fix -> {}, () -> "");
        aircraft.close();
        // What the desk still sees to asks for plans until it has closed.
        desk.close();
        planning.shutdownNow();
    }
}
