package crowdline.running;

import crowdline.live.now.JournalHealth;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;

/** How far the disk is behind what the screen shows. On the {@code live} thread only. */
final class JournalProgress {
    /** A disk that takes longer for an event than this is slow, seconds. Tuned: longer than a good one, shorter than a glance. */
    static final double SLOW_S = 0.15;

    private final Deque<Double> unwrittenAtS = new ArrayDeque<>();
    private final Deque<Waiter> waiters = new ArrayDeque<>();
    private long given;
    private long written;
    private JournalHealth health;

    private record Waiter(long given, CompletableFuture<Void> done) {}

    JournalProgress(JournalHealth health) {
        this.health = health;
    }

    /** An event was given to the writer. */
    void gave(double nowS) {
        given++;
        unwrittenAtS.add(nowS);
    }

    void heard(JournalWriter.Report report) {
        health = report.health();
        for (; written < report.written(); written++) {
            unwrittenAtS.poll();
        }
    }

    /** Tells those who wait for what is written by now. */
    void tell() {
        while (!waiters.isEmpty() && waiters.element().given() <= written) {
            waiters.remove().done().complete(null);
        }
    }

    /** Completes once everything given so far is on the disk. */
    void whenWritten(CompletableFuture<Void> done) {
        waiters.add(new Waiter(given, done));
    }

    /** Nothing more will be written; who waits for what was not learns that. */
    void end(boolean everythingWritten) {
        if (everythingWritten) {
            written = given;
        }
        tell();
        waiters.forEach(waiter -> waiter.done().cancel(false));
    }

    int unwritten() {
        return unwrittenAtS.size();
    }

    /** When the disk counts as slow if it has not answered by then. */
    OptionalDouble slowAtS() {
        Double first = unwrittenAtS.peek();
        return first == null || health instanceof JournalHealth.NotWriting
                ? OptionalDouble.empty()
                : OptionalDouble.of(first + SLOW_S);
    }

    /** What the screen says of the journal. */
    JournalHealth health(double nowS) {
        if (health instanceof JournalHealth.NotWriting not) {
            return new JournalHealth.NotWriting(not.reason(), unwritten());
        }
        OptionalDouble slowAtS = slowAtS();
        return slowAtS.isPresent() && nowS >= slowAtS.getAsDouble() ? new JournalHealth.Slow(unwritten()) : health;
    }
}
