package crowdline.telemetry.serial;

import java.util.function.LongSupplier;

/** A clock that stands still until it is told. */
final class TestClock implements LongSupplier {
    private long nowNs = -5_000_000_000L; // a monotonic clock may well be below 0

    void passMs(long ms) {
        nowNs += ms * 1_000_000;
    }

    @Override
    public long getAsLong() {
        return nowNs;
    }
}
