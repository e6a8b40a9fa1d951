package crowdline.app;

import crowdline.live.Ticker;

/** The machine's monotonic clock. */
public final class MonotonicTicker implements Ticker {
    @Override
    public long nanos() {
        return System.nanoTime();
    }
}
