package crowdline.flight.body;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth curve read off at even distances and joined by cubics that have its slopes: fast enough for the innermost loop.
 * What lies beyond the last of them is computed. Error for what propellers pull below 1e-8 of it.
 */
final class PullCurve {
    private static final double PER_ONE = 32;
    private static final int ROWS = 512;
    /** A slope is found over twice as much. */
    private static final double SLIGHT = 1e-4;

    private final DoubleUnaryOperator exact;
    private final double[] value = new double[ROWS + 1];
    /** Growth from a row to the next if it went on as there. */
    private final double[] slope = new double[ROWS + 1];

    /** @param exact defined from a little below 0 on */
    PullCurve(DoubleUnaryOperator exact) {
        this.exact = exact;
        for (int i = 0; i <= ROWS; i++) {
            double x = i / PER_ONE;
            value[i] = exact.applyAsDouble(x);
            slope[i] = (exact.applyAsDouble(x + SLIGHT) - exact.applyAsDouble(x - SLIGHT)) / (2 * SLIGHT * PER_ONE);
        }
    }

    /** @param x 0 or above */
    double at(double x) {
        double place = x * PER_ONE;
        int row = (int) place;
        if (row >= ROWS) {
            return exact.applyAsDouble(x);
        }
        double share = place - row;
        double gone = value[row + 1] - value[row];
        double bend = slope[row] - gone;
        double back = slope[row + 1] - gone;
        return value[row] + share * (slope[row] + share * (share * (bend + back) - 2 * bend - back));
    }
}
