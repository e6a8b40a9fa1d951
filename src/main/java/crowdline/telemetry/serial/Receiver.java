package crowdline.telemetry.serial;

import crowdline.telemetry.Fix;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/** A receiver that is being read, in a thread of its own named {@code serial-reader}, until it is closed. */
public final class Receiver implements AutoCloseable {
    private final ReceiverSession session;
    private final ReaderThread thread;

    private Receiver(ReceiverSession session) {
        this.session = session;
        thread = new ReaderThread("serial-reader", session);
    }

    /**
     * Begins to read.
     *
     * @param nanos the machine's monotonic clock, nanoseconds
     * @param fixes takes each position, in the reader's thread; must not block
     */
    public static Receiver start(LinkOpener opener, LongSupplier nanos, Consumer<Fix> fixes) {
        Receiver receiver = new Receiver(new ReceiverSession(opener, nanos, fixes));
        receiver.thread.start();
        return receiver;
    }

    /** How it stands now; from any thread, without waiting. */
    public ReceiverStatus status() {
        return session.status();
    }

    /** Ends reading; the reader itself gives the port back. Closing again does nothing. */
    @Override
    public void close() {
        thread.close();
    }

    boolean isReading() {
        return thread.isAlive();
    }
}
