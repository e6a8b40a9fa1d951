package crowdline.live.now;

/** A monotonic clock: it never jumps and never runs backwards while the machine is up. */
@FunctionalInterface
public interface Ticker {
    /** Nanoseconds since a moment that stays the same while the machine is up; may be negative. */
    long nanos();
}
