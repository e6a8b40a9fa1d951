package crowdline.running;

import crowdline.live.now.LiveNow;
import crowdline.live.now.PlanAhead;
import crowdline.live.now.TakenAsSaid;
import crowdline.live.state.Day.AddedAct;
import crowdline.live.state.LiveState;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.Prediction;
import crowdline.patter.Plan;
import crowdline.patter.Planner;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalReading;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * A show that runs in another process, followed by its journal. The journal is only read, so that nothing here can disturb
 * what is run; what is to be said is planned anew from what it says.
 */
public final class WatchedShow implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(WatchedShow.class.getName());
    private static final long LOOK_MS = 250;
    private static final Duration LOOKS_FOR_ANOTHER = Duration.ofSeconds(5);
    private static final double NANOS_PER_S = 1e9;

    private final LoadedShow loaded;
    private final JournalShelf shelf;
    private final JournalShow identity;
    private final InstantSource clock;
    private final ScheduledExecutorService watching = NamedThread.scheduled("watch");
    private final Planner planner = new Planner();
    private volatile @Nullable Seen seen;
    /** On the watching thread only: taken anew where another journal is followed. */
    private TakenAsSaid aired = new TakenAsSaid();

    private boolean unread;
    /** On the watching thread only: when the journal was chosen, and how long it was then. */
    private Instant chosenAt = Instant.MIN;

    private long bytes = -1;

    /**
     * What is known of it.
     *
     * @param show as it is flown: with the acts that were put in on the day
     * @param reading the newest of its journal
     * @param plan what to say when, in the session's seconds
     */
    public record Seen(LoadedShow show, JournalReading reading, Plan plan) {
        /** The running show. */
        public LiveState state() {
            return reading.state();
        }

        /** Seconds of the session at a moment. */
        double atS(Instant wall) {
            return Math.max(0, Duration.between(reading.zero(), wall).toNanos() / NANOS_PER_S);
        }

        /** What can be read off it at a moment. */
        public LiveNow now(Instant wall) {
            return LiveNow.of(state(), show.durations().of(state()), atS(wall), wall);
        }
    }

    /**
     * @param shelf of the journals of the process that runs it
     * @param clock the clock on the wall
     */
    public WatchedShow(LoadedShow loaded, JournalShelf shelf, JournalShow identity, InstantSource clock) {
        this.loaded = loaded;
        this.shelf = shelf;
        this.identity = identity;
        this.clock = clock;
    }

    /** Looks from now on, four times a second. */
    public void begin() {
        var unused = watching.scheduleWithFixedDelay(this::look, 0, LOOK_MS, TimeUnit.MILLISECONDS);
    }

    /** What was seen last; empty until somebody runs the show. From any thread. */
    public Optional<Seen> seen() {
        return Optional.ofNullable(seen);
    }

    /** Reads the journal once. */
    void look() {
        try {
            Seen last = seen;
            Instant wall = clock.instant();
            if (last != null && isAsItWas(last.reading().path(), wall)) {
                seen = next(last.reading());
                return;
            }
            // As long as it was before it is read, so that what is written meanwhile is read the next time.
            long longer = last == null ? -1 : last.reading().path().toFile().length();
            Optional<JournalReading> reading = shelf.running(identity);
            chosenAt = wall;
            bytes = reading.filter(r -> last != null
                                    && r.path().equals(last.reading().path()))
                            .isPresent()
                    ? longer
                    : -1;
            seen = reading.isEmpty() ? null : next(reading.get());
            unread = false;
        } catch (ShowFileException | RuntimeException e) {
            // The root of the thread: what was seen before stays.
            if (!unread) {
                unread = true;
                LOG.log(System.Logger.Level.WARNING, "The journal of the running show was not read", e);
            }
        }
    }

    /** Whether nothing was written since, and another journal was looked for not long ago. */
    private boolean isAsItWas(Path journal, Instant wall) {
        return journal.toFile().length() == bytes
                && Duration.between(chosenAt, wall).compareTo(LOOKS_FOR_ANOTHER) < 0;
    }

    private Seen next(JournalReading reading) {
        Seen last = seen;
        Plan before = Plan.NOT_YET;
        if (last != null && last.reading().path().equals(reading.path())) {
            before = last.plan();
        } else {
            aired = new TakenAsSaid();
        }
        LoadedShow ofTheDay = ofTheDay(last, reading.state().day().added());
        Seen now = new Seen(ofTheDay, reading, before);
        return new Seen(ofTheDay, reading, plan(now));
    }

    private LoadedShow ofTheDay(@Nullable Seen last, List<AddedAct> added) {
        if (last != null && last.state().day().added().equals(added)) {
            return last.show();
        }
        return loaded.onTheDay(added);
    }

    private Plan plan(Seen now) {
        LiveState state = now.state();
        LiveNow at = now.now(clock.instant());
        Prediction prediction =
                now.show().prediction(state.actId(), state.variant()).orElse(null);
        if (prediction == null) {
            return Plan.EMPTY;
        }
        PlanAhead ahead = now.show().planAhead();
        aired.follow(state, now.plan(), at.nowS(), ahead::isOfTheDay);
        return planner.plan(
                aired.request(ahead.request(state, at, prediction.times(), Optional.of(now.plan()), aired.ids(), 0)));
    }

    @Override
    public void close() {
        watching.shutdownNow();
    }
}
