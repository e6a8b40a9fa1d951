package crowdline.console.window;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * Carries values from any thread to the event thread. Only the newest is delivered and at most one delivery waits at a
 * time: a slow screen skips pictures, and nobody who sends ever waits for it. It is for what is shown, never for events.
 *
 * @param <T> what is carried; each value stands for everything to be shown, so that skipping one loses nothing
 */
public final class Courier<T> {
    private final AtomicReference<@Nullable T> waiting = new AtomicReference<>();
    private final Executor screen;
    private final Consumer<T> receiver;

    /** A courier to the event thread. */
    public Courier(Consumer<T> receiver) {
        this(SwingUtilities::invokeLater, receiver);
    }

    Courier(Executor screen, Consumer<T> receiver) {
        this.screen = screen;
        this.receiver = receiver;
    }

    /** Sends a value; from any thread. */
    public void send(T value) {
        if (waiting.getAndSet(value) == null) {
            screen.execute(this::deliver);
        }
    }

    private void deliver() {
        T value = waiting.getAndSet(null);
        if (value != null) {
            receiver.accept(value);
        }
    }
}
