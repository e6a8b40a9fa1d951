package crowdline.telemetry.serial;

import java.util.function.Consumer;
import java.util.function.LongSupplier;

/** A foot switch or remote that is being listened to, in a thread of its own named {@code serial-buttons}. */
public final class ButtonPort implements AutoCloseable {
    private final ButtonSession session;
    private final ReaderThread thread;

    private ButtonPort(ButtonSession session) {
        this.session = session;
        thread = new ReaderThread("serial-buttons", session);
    }

    /**
     * Begins to listen, at the first of the opener's speeds.
     *
     * @param nanos the machine's monotonic clock, nanoseconds
     * @param heard takes each signal for {@link Buttons} or a {@link ButtonLearner}, in the reader's thread; must not block
     */
    public static ButtonPort start(LinkOpener opener, LongSupplier nanos, Consumer<HeardSignal> heard) {
        ButtonPort port = new ButtonPort(new ButtonSession(opener, nanos, heard));
        port.thread.start();
        return port;
    }

    /** How it stands; from any thread, without waiting. */
    public ButtonStatus status() {
        return session.status();
    }

    /** Ends listening; the reader itself gives the port back. Closing again does nothing. */
    @Override
    public void close() {
        thread.close();
    }
}
