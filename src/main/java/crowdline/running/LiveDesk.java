package crowdline.running;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.now.Desk;
import crowdline.live.now.LiveNow;
import crowdline.live.now.LiveSnapshot;
import crowdline.live.state.ActDurations;
import crowdline.live.state.ClockAdvance;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.running.DeskQueue.Close;
import crowdline.running.DeskQueue.Command;
import crowdline.running.DeskQueue.Heard;
import crowdline.running.DeskQueue.Leave;
import crowdline.running.DeskQueue.Post;
import crowdline.running.DeskQueue.Wake;
import crowdline.running.DeskQueue.Written;
import crowdline.storage.journal.Journal;
import crowdline.storage.journal.JournalOpening;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Owns the running show: one thread, {@code live}, takes events from one queue, gives each to the thread that writes the
 * journal and publishes an immutable snapshot, which says what the disk does not have yet. Every method may be called from
 * any thread and none waits for the disk, except {@link #close}.
 */
public final class LiveDesk implements Desk, AutoCloseable {
    private static final System.Logger LOG = System.getLogger(LiveDesk.class.getName());
    private static final double IDLE_S = 60;
    /** Closing waits this long for a slow disk, seconds: longer than any disk that still works. */
    private static final double CLOSE_S = 10;

    private final Journal journal;
    private final JournalWriter writer;
    /** On the {@code live} thread alone, once it runs. */
    private final JournalProgress progress;

    private final double closeS;
    private final LiveBoard board;
    private final DeskQueue queue = new DeskQueue();
    private volatile ActDurations durations;
    /** Written by the {@code live} thread alone, once it runs. */
    private LiveState state;

    /**
     * Takes the show up where the journal left it, with the clock where it is by now, and starts the thread.
     *
     * @param opening an open journal; the desk closes it
     * @param durations how long figures last, for the clock
     */
    public LiveDesk(JournalOpening opening, ActDurations durations) {
        this(opening, durations, CLOSE_S);
    }

    /** @param closeS how long closing waits for the disk, seconds */
    public LiveDesk(JournalOpening opening, ActDurations durations, double closeS) {
        this.journal = opening.journal();
        this.closeS = closeS;
        this.writer = new JournalWriter(journal, report -> queue.put(new Heard(report, new CompletableFuture<>())));
        this.progress = new JournalProgress(journal.health());
        this.board = new LiveBoard(opening);
        this.durations = new GuardedDurations(durations);
        this.state = opening.state();
        advanceClock(journal.nowS());
        writer.start();
        // Nothing is lost when the process ends: what was not marked as unwritten is on the disk.
        NamedThread.of("live", this::run).start();
    }

    @Override
    public LiveSnapshot snapshot() {
        return board.snapshot();
    }

    @Override
    public double nowS() {
        return journal.nowS();
    }

    @Override
    public LiveNow now(Instant wall) {
        LiveState latest = snapshot().state();
        return LiveNow.of(latest, durations.of(latest), nowS(), wall);
    }

    @Override
    public CompletableFuture<Step> submit(LiveEvent event) {
        CompletableFuture<Step> done = new CompletableFuture<>();
        queue.put(new Post(event, done));
        return done;
    }

    @Override
    public void post(DoubleFunction<? extends LiveEvent> event) {
        queue.put(new Post(event.apply(nowS()), new CompletableFuture<>()));
    }

    @Override
    public void useDurations(ActDurations next) {
        durations = new GuardedDurations(next);
        queue.put(new Wake(new CompletableFuture<>()));
    }

    /** Done once everything posted before is on the disk; not as long as it cannot be written. */
    public CompletableFuture<Void> written() {
        CompletableFuture<Void> onDisk = new CompletableFuture<>();
        queue.put(new Written(onDisk, new CompletableFuture<>()));
        return onDisk;
    }

    /** Looks at the clock now; the future is done when that has been seen to. */
    public CompletableFuture<Step> wake() {
        CompletableFuture<Step> done = new CompletableFuture<>();
        queue.put(new Wake(done));
        return done;
    }

    @Override
    public void onChange(Consumer<LiveSnapshot> listener) {
        board.onChange(listener);
    }

    @Override
    public void forget(Consumer<LiveSnapshot> listener) {
        board.forget(listener);
    }

    /**
     * Sees to everything posted before, closes the journal and ends the thread; waits for the disk, but not for one that
     * does not answer. More than once is once.
     */
    @Override
    public void close() {
        queue.put(new Close(new CompletableFuture<>()));
        queue.awaitEnd();
    }

    /**
     * Closes as {@link #close}, unless an act is in the air or the incident page is open once everything posted before was
     * seen to.
     *
     * @return whether it closed, or had closed before
     */
    public boolean leave() {
        Leave leave = new Leave(new CompletableFuture<>());
        queue.put(leave);
        if (leave.done().join() instanceof Step.Moved) {
            return false;
        }
        queue.awaitEnd();
        return true;
    }

    private void run() {
        boolean open = true;
        while (open) {
            Command command = null;
            try {
                command = next();
                open = !(command instanceof Close) && !(command instanceof Leave && !state.mustNotBeLeft());
                see(command, open);
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                // The root of the thread: whatever went wrong with one event, the show goes on.
                LOG.log(System.Logger.Level.ERROR, "The live desk could not handle " + command, e);
                if (command != null) {
                    command.done().complete(new Step.Refused("That could not be done; the reason is in the log."));
                }
            } catch (InterruptedException e) {
                open = false;
            }
        }
        try {
            boolean everything = writer.close(closeS);
            progress.end(everything);
            if (!everything) {
                LOG.log(
                        System.Logger.Level.WARNING,
                        "The disk did not take the last {0} events of the show within {1} seconds",
                        progress.unwritten(),
                        closeS);
            }
        } catch (InterruptedException e) {
            LOG.log(System.Logger.Level.WARNING, "Nobody waited for the journal to be written", e);
        }
        queue.end();
    }

    /** What was posted comes first: a key pressed before a boundary was due must be seen before the clock. */
    private @Nullable Command next() throws InterruptedException {
        Command posted = queue.next();
        if (posted != null) {
            return posted;
        }
        double waitS = IDLE_S;
        OptionalDouble dueS = ClockAdvance.nextDueS(state, durations.of(state));
        if (dueS.isPresent()) {
            waitS = Math.min(waitS, dueS.getAsDouble() - nowS());
        }
        OptionalDouble toTellS = board.nextDueS(progress);
        if (toTellS.isPresent()) {
            waitS = Math.min(waitS, toTellS.getAsDouble() - nowS());
        }
        return queue.next(waitS);
    }

    private void see(@Nullable Command command, boolean open) {
        if (command instanceof Post post) {
            advanceClock(post.event().atS());
            post.done().complete(apply(post.event()));
            return;
        }
        if (command instanceof Heard heard) {
            // A key may wait behind it that was pressed before a boundary was due.
            progress.heard(heard.report());
        } else {
            advanceClock(nowS());
        }
        if (command instanceof Written written) {
            progress.whenWritten(written.onDisk());
            writer.look();
        }
        board.look(progress, nowS());
        progress.tell();
        if (command != null) {
            command.done().complete(open ? new Step.Moved(state) : DeskQueue.closed());
        }
    }

    private void advanceClock(double nowS) {
        List<LiveEvent> passed = new ArrayList<>();
        boolean more = true;
        while (more) {
            Optional<FlightEvent.ClockAdvanced> due = ClockAdvance.due(state, durations.of(state), nowS);
            more = false;
            if (due.isPresent() && Live.next(state, due.get()) instanceof Step.Moved moved) {
                passed.add(due.get());
                state = moved.state();
                more = true;
            }
        }
        if (!passed.isEmpty()) {
            passed.forEach(this::write);
            publish(null);
        }
    }

    private Step apply(LiveEvent event) {
        Step step = Live.next(state, event);
        if (step instanceof Step.Moved moved) {
            write(event);
            state = moved.state();
            publish(null);
        } else if (step instanceof Step.Refused refused) {
            publish(refused.reason());
        }
        return step;
    }

    private void write(LiveEvent event) {
        progress.gave(nowS());
        writer.write(event);
    }

    private void publish(@Nullable String refusal) {
        board.publish(state, refusal, progress, nowS());
    }
}
