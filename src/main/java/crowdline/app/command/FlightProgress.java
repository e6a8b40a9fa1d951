package crowdline.app.command;

import crowdline.app.shell.Terminal;
import java.util.function.DoubleConsumer;
import java.util.function.LongSupplier;

/** Says how far many flights have come, once a second, and nothing at all if they are done within the first. */
final class FlightProgress implements DoubleConsumer {
    private static final long EVERY_NS = 1_000_000_000L;

    private final Terminal terminal;
    private final LongSupplier nowNs;
    private long nextNs;

    /** @param nowNs a clock that only goes forward, nanoseconds */
    FlightProgress(Terminal terminal, LongSupplier nowNs) {
        this.terminal = terminal;
        this.nowNs = nowNs;
        nextNs = nowNs.getAsLong() + EVERY_NS;
    }

    @Override
    public synchronized void accept(double share) {
        long now = nowNs.getAsLong();
        if (now - nextNs >= 0 && share < 1) {
            nextNs = now + EVERY_NS;
            terminal.err().println("crowdline: " + (int) (100 * share) + " % of the varied flights flown");
        }
    }
}
