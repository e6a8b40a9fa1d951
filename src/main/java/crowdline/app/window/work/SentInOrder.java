package crowdline.app.window.work;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Hands work to something that is made later, in the order in which it was sent: what was sent before on one thread, what
 * is sent once all of that is done at once. From any thread; nobody waits.
 *
 * @param <T> what is made later
 */
final class SentInOrder<T> {
    private final Executor thread;
    private final Queue<Consumer<T>> waiting = new ArrayDeque<>();
    private @Nullable T made;
    private boolean done;

    /** @param thread does what was sent too early, one after another */
    SentInOrder(Executor thread) {
        this.thread = thread;
    }

    /** It is made. */
    void made(T it) {
        synchronized (this) {
            made = it;
        }
        thread.execute(this::handOver);
    }

    /** Does this with it, in any thread. */
    void send(Consumer<T> work) {
        T it;
        synchronized (this) {
            it = made;
            if (it == null || !done) {
                waiting.add(work);
                return;
            }
        }
        work.accept(it);
    }

    /** If one fails, those behind it still come. */
    private void handOver() {
        T it;
        Consumer<T> next;
        synchronized (this) {
            it = made;
            next = waiting.poll();
            done = next == null;
        }
        if (it != null && next != null) {
            try {
                next.accept(it);
            } finally {
                thread.execute(this::handOver);
            }
        }
    }
}
