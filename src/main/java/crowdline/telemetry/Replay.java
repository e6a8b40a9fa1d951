package crowdline.telemetry;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Plays a flight log as if it were flown now: at its own speed or faster. Time is told to it, so it never waits itself.
 */
public final class Replay {
    private final List<Fix> fixes;
    private final double factor;
    private int next;

    /**
     * Stands before the first fix.
     *
     * @param factor how much faster than flown, above 0; 1 for as flown
     */
    public Replay(FlightLog log, double factor) {
        if (!(factor > 0) || !Double.isFinite(factor)) {
            throw new IllegalArgumentException("factor is " + factor + "; it must be a number above 0");
        }
        fixes = log.fixes();
        this.factor = factor;
    }

    /**
     * The fixes that have come due since the last call.
     *
     * @param elapsedS seconds since the replay began, on the clock of who asks
     */
    public List<Fix> upTo(double elapsedS) {
        int from = next;
        while (next < fixes.size() && dueS(next) <= elapsedS) {
            next++;
        }
        return fixes.subList(from, next);
    }

    /** When the next fix comes due, seconds since the replay began; empty after the last. */
    public OptionalDouble nextDueS() {
        return next < fixes.size() ? OptionalDouble.of(dueS(next)) : OptionalDouble.empty();
    }

    private double dueS(int index) {
        return (fixes.get(index).tS() - fixes.get(0).tS()) / factor;
    }
}
