package crowdline.app.shell;

import crowdline.live.now.Ticker;

/** The machine's monotonic clock. */
public final class MonotonicTicker implements Ticker {
    @Override
    public long nanos() {
        return System.nanoTime();
    }
}
