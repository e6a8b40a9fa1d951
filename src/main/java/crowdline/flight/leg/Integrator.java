package crowdline.flight.leg;

import crowdline.flight.body.FlightState;

/**
 * Flies legs: Dormand–Prince steps as long as a tolerance allows, values in between where somebody watches, and an end
 * found where the leg's end function is zero.
 */
public final class Integrator {
    /** Told of the first and the last point of a leg, and of those in between that lie on the grid. */
    public interface Watcher {
        void at(Leg leg, double tS, double legS, double[] y);
    }

    /** How a leg ended. */
    public enum Outcome {
        FLOWN,
        OUT_OF_SPEED,
        NEVER_ENDS,
        /** The numbers are so far out of proportion that no step of the integration is short enough. */
        NOT_COMPUTED
    }

    /** What is left after a leg. */
    public record Result(Outcome outcome, FlightState moment) {}

    /** Error of a step, in proportion, where the result is looked at: heights within a tenth of a millimetre. */
    public static final double FINE = 3e-7;
    /** Error of a step where only durations are wanted: those of the catalogue's figures stay within 2 ms. */
    public static final double COARSE = 5e-6;
    /** For {@code gridS}: nobody watches in between. */
    public static final double NO_GRID = 0;

    private static final double FIRST_STEP_S = 0.4;
    private static final double LONGEST_STEP_S = 2;
    /** A step this short is taken whatever its error: the equations have a corner there. */
    private static final double SHORTEST_STEP_S = 1e-4;
    /** How exactly the moment is told at which the speed has run out. */
    private static final double NOTICED_S = 0.1;

    /** The longest legs of real aircraft take some hundred; this many are tried in a moment. */
    private static final int MOST_STEPS = 20_000;

    private static final int END_ITERATIONS = 60;
    private static final double END_TOLERANCE = 1e-10;
    /** How far below zero an end that was aimed at may lie by rounding. */
    private static final double ROUNDING = 1e-12;

    private final double gridS;
    private final double tolerance;
    private final Watcher watcher;
    private final Steps steps;

    private final DormandPrince pair = new DormandPrince();
    private double[] between = new double[0];

    /**
     * @param gridS the watcher is told of times that are a multiple of this, seconds, and of more where the leg asks for
     *     it; or {@link #NO_GRID}
     * @param tolerance largest error of a step in proportion to the coordinates, or as it is for those below 1
     */
    public Integrator(double gridS, double tolerance, Watcher watcher) {
        this(gridS, tolerance, watcher, new Steps());
    }

    /** The same, with its steps counted. */
    public Integrator(double gridS, double tolerance, Watcher watcher, Steps steps) {
        this.steps = steps;
        this.gridS = gridS;
        this.tolerance = tolerance;
        this.watcher = watcher;
    }

    /** Another as exact that nobody watches, whose steps are counted with those of this one. */
    Integrator unwatched() {
        return new Integrator(NO_GRID, tolerance, (leg, tS, legS, y) -> {}, steps);
    }

    /** Flies a leg to its end. */
    public Result fly(Leg leg, double startS) {
        double[] y = leg.start();
        watcher.at(leg, startS, 0, y);
        if (leg.end(0, y) >= 0) {
            return new Result(Outcome.FLOWN, leg.after(startS, 0, y));
        }
        double[] next = new double[y.length];
        between = new double[y.length];
        pair.begin(leg, 0, y);
        double t = 0;
        double h = FIRST_STEP_S;
        for (int tried = 0; t < leg.longestS(); tried++) {
            if (leg.outOfSpeed(t, y)) {
                return new Result(Outcome.OUT_OF_SPEED, leg.after(startS + t, t, y));
            }
            double step = Math.min(h, leg.dueS() - t);
            double error = pair.advance(leg, t, y, step, next);
            steps.take();
            h = nextStep(step, error);
            if (!(error <= tolerance) && step > SHORTEST_STEP_S) {
                continue;
            }
            if (tried > MOST_STEPS || !isFinite(next)) {
                return new Result(Outcome.NOT_COMPUTED, leg.after(startS + t, t, y));
            }
            if (leg.end(t + step, next) >= -ROUNDING) {
                double last = untilEnd(leg, t, y, step, next);
                watch(leg, startS, t, y, last, next);
                watcher.at(leg, startS + t + last, t + last, next);
                return new Result(Outcome.FLOWN, leg.after(startS + t + last, t + last, next));
            }
            if (step > NOTICED_S && leg.outOfSpeed(t + step, next)) {
                h = step / 2;
                continue;
            }
            watch(leg, startS, t, y, step, next);
            pair.goOn();
            t += step;
            double[] swap = y;
            y = next;
            next = swap;
        }
        return new Result(Outcome.NEVER_ENDS, leg.after(startS + t, t, y));
    }

    private static boolean isFinite(double[] y) {
        for (double value : y) {
            if (!Double.isFinite(value)) {
                return false;
            }
        }
        return true;
    }

    /** The usual rule for a pair of orders five and four; a step that is not a number counts as far too long. */
    private double nextStep(double step, double error) {
        double factor = error == 0 ? 5 : 0.9 * Math.pow(tolerance / error, 0.2);
        double limited = factor > 0.2 ? Math.min(factor, 5) : 0.2;
        return Math.min(Math.max(step * limited, SHORTEST_STEP_S), LONGEST_STEP_S);
    }

    /** Shows the points of the step that lie on the grid. */
    private void watch(Leg leg, double startS, double t, double[] y, double h, double[] next) {
        if (gridS == NO_GRID) {
            return;
        }
        double grid = gridS / leg.looksPerSample();
        double first = Math.ceil((startS + t) / grid - 1e-9);
        for (double i = first; i * grid < startS + t + h - 1e-9; i++) {
            double legS = i * grid - startS;
            pair.between(y, h, next, Math.max((legS - t) / h, 0), between);
            watcher.at(leg, i * grid, legS, between);
        }
    }

    /** The length of the step that ends the leg; leaves the end point in {@code next}. */
    private double untilEnd(Leg leg, double t, double[] y, double h, double[] next) {
        if (leg.end(t + h, next) <= END_TOLERANCE) {
            return h;
        }
        double length = h * shareUntilEnd(leg, t, y, h, next);
        pair.advance(leg, t, y, length, next);
        return length + settle(leg, t + length, next);
    }

    /** Regula falsi (Illinois) on the values within the step. */
    private double shareUntilEnd(Leg leg, double t, double[] y, double h, double[] next) {
        double low = 0;
        double fLow = leg.end(t, y);
        double high = 1;
        double fHigh = leg.end(t + h, next);
        for (int i = 0; i < END_ITERATIONS && high - low > 1e-14; i++) {
            double at = low + (high - low) * fLow / (fLow - fHigh);
            pair.between(y, h, next, at, between);
            double f = leg.end(t + at * h, between);
            if (Math.abs(f) <= END_TOLERANCE) {
                return at;
            }
            if (f < 0) {
                low = at;
                fLow = f;
                fHigh /= 2;
            } else {
                high = at;
                fHigh = f;
                fLow /= 2;
            }
        }
        return high;
    }

    /** Takes the last millionths along the slope; gives by how much the end was put off, seconds. */
    private double settle(Leg leg, double t, double[] next) {
        double off = leg.end(t, next);
        double slight = 1e-6;
        along(next, slight);
        double slope = (leg.end(t + slight, between) - off) / slight;
        double more = slope == 0 ? 0 : -off / slope;
        if (!(Math.abs(more) < SHORTEST_STEP_S)) {
            return 0;
        }
        along(next, more);
        System.arraycopy(between, 0, next, 0, next.length);
        return more;
    }

    private void along(double[] next, double seconds) {
        for (int i = 0; i < next.length; i++) {
            between[i] = next[i] + seconds * pair.slopes()[i];
        }
    }
}
