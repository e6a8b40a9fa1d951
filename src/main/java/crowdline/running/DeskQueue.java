package crowdline.running;

import crowdline.live.event.LiveEvent;
import crowdline.live.state.Step;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What the live desk is asked, in the order in which it was asked, from any thread; what comes after its end is refused and never
 * left waiting.
 */
final class DeskQueue {
    private static final double NANOS_PER_S = 1e9;
    private static final Step CLOSED = new Step.Refused("The desk is closed.");

    private final BlockingQueue<Command> queue = new LinkedBlockingQueue<>();
    private final CompletableFuture<Step> ended = new CompletableFuture<>();

    /** Something that is asked of the desk. */
    sealed interface Command {
        /** What came of it. */
        CompletableFuture<Step> done();
    }

    record Post(LiveEvent event, CompletableFuture<Step> done) implements Command {}

    record Wake(CompletableFuture<Step> done) implements Command {}

    record Written(CompletableFuture<Void> onDisk, CompletableFuture<Step> done) implements Command {}

    record Heard(JournalWriter.Report report, CompletableFuture<Step> done) implements Command {}

    record Close(CompletableFuture<Step> done) implements Command {}

    record Leave(CompletableFuture<Step> done) implements Command {}

    void put(Command command) {
        queue.add(command);
        if (ended.isDone()) {
            refuseTheRest();
        }
    }

    /** The next one if it is there already. */
    @Nullable
    Command next() {
        return queue.poll();
    }

    /** The next one; null if none came for so long, seconds. */
    @Nullable
    Command next(double waitS) throws InterruptedException {
        return queue.poll(Math.max(0, (long) Math.ceil(waitS * NANOS_PER_S)), TimeUnit.NANOSECONDS);
    }

    /** What was asked as the last thing is answered as everything after it is. */
    static Step closed() {
        return CLOSED;
    }

    /** Nothing more is taken. */
    void end() {
        ended.complete(CLOSED);
        refuseTheRest();
    }

    void awaitEnd() {
        ended.join();
    }

    private void refuseTheRest() {
        for (Command left = queue.poll(); left != null; left = queue.poll()) {
            if (left instanceof Written waiting) {
                waiting.onDisk().cancel(false);
            }
            left.done().complete(CLOSED);
        }
    }
}
