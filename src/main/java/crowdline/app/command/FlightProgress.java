package crowdline.app.command;

import crowdline.app.shell.Terminal;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.DoubleConsumer;
import java.util.function.LongSupplier;

/** Says how far many flights have come, once a second, and nothing at all if they are done within the first. */
final class FlightProgress implements DoubleConsumer {
    private static final long EVERY_NS = 1_000_000_000L;

    private final Terminal terminal;
    private final LongSupplier nowNs;
    private final AtomicLong nextNs;

    /** @param nowNs a clock that only goes forward, nanoseconds */
    FlightProgress(Terminal terminal, LongSupplier nowNs) {
        this.terminal = terminal;
        this.nowNs = nowNs;
        nextNs = new AtomicLong(nowNs.getAsLong() + EVERY_NS);
    }

    @Override
    public void accept(double share) {
        long now = nowNs.getAsLong();
        long due = nextNs.get();
        if (now - due >= 0 && share < 1 && nextNs.compareAndSet(due, now + EVERY_NS)) {
            terminal.err().println("crowdline: " + (int) (100 * share) + "% of the varied flights flown");
        }
    }
}
