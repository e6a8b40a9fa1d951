package crowdline.running;

import crowdline.live.event.LiveEvent;
import crowdline.live.now.JournalHealth;
import crowdline.storage.journal.Journal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Writes the journal on a thread of its own, {@code journal}, in the order in which events are given: what came while the
 * disk was busy goes to it in one write. Looks now and then whether the journal is still there.
 */
final class JournalWriter {
    private static final System.Logger LOG = System.getLogger(JournalWriter.class.getName());
    /** How often a journal that cannot be written is tried again, and one that can is looked for. */
    private static final long LOOK_MS = 2000;

    private final Journal journal;
    private final Consumer<Report> told;
    private final BlockingQueue<Job> queue = new LinkedBlockingQueue<>();
    private final CountDownLatch ended = new CountDownLatch(1);
    /** On the journal thread only. */
    private long taken;

    private long written;
    private Report last;

    /**
     * How far the journal is.
     *
     * @param written how many of the events given are on the disk
     */
    record Report(long written, JournalHealth health) {}

    private sealed interface Job {}

    private record Event(LiveEvent event) implements Job {}

    private record Look() implements Job {}

    private record End() implements Job {}

    /** @param told what has become of the journal, on its thread; it must not wait */
    JournalWriter(Journal journal, Consumer<Report> told) {
        this.journal = journal;
        this.told = told;
        last = new Report(0, journal.health());
    }

    void start() {
        // A disk that never answers must not keep the process; whoever closes waits as long as makes sense.
        NamedThread.of("journal", this::run).start();
    }

    /** Has an event written after all those given before; from one thread, which does not wait. */
    void write(LiveEvent event) {
        queue.add(new Event(event));
    }

    /** Looks at once whether the journal is still there and can be written. */
    void look() {
        queue.add(new Look());
    }

    /**
     * Writes everything given, closes the journal and ends the thread.
     *
     * @param seconds waits no longer than this; the thread goes on by itself as long as the process lives
     * @return whether that was enough
     */
    boolean close(double seconds) throws InterruptedException {
        queue.add(new End());
        return ended.await(Math.round(seconds * 1000), TimeUnit.MILLISECONDS);
    }

    private void run() {
        boolean open = true;
        // The beginning is written before there is an event.
        List<LiveEvent> events = List.of();
        while (open) {
            try {
                write(events);
                events = new ArrayList<>();
                open = take(events);
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                // The root of the thread: whatever went wrong with one event, the next ones are written.
                LOG.log(System.Logger.Level.ERROR, "The journal could not take " + events, e);
                events = List.of();
            } catch (InterruptedException e) {
                open = false;
            }
        }
        try {
            write(events);
            journal.close();
        } finally {
            ended.countDown();
        }
    }

    /** Waits for events; false at the end. */
    private boolean take(List<LiveEvent> events) throws InterruptedException {
        Job next = queue.poll(LOOK_MS, TimeUnit.MILLISECONDS);
        while (next != null && !(next instanceof End)) {
            if (next instanceof Event event) {
                events.add(event.event());
            }
            next = queue.poll();
        }
        return next == null;
    }

    private void write(List<LiveEvent> events) {
        taken += events.size();
        JournalHealth health = events.isEmpty() ? journal.retry() : journal.append(events);
        if (!(health instanceof JournalHealth.NotWriting)) {
            written = taken;
        }
        Report now = new Report(written, health);
        if (!now.equals(last)) {
            last = now;
            told.accept(now);
        }
    }
}
