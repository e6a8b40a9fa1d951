package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Looks back at when a figure began, once what followed is known. At the moment itself a bend is told from a straight line
 * only after it has gone on for a while; afterwards the bend flown can be laid over the one predicted. Where nothing bends
 * it stays with what was said. All numbers are tuned.
 */
final class LookBack {
    /** So far each way the path is looked at, seconds. */
    private static final double WINDOW_S = 2;
    /** And so far where readings are few. */
    private static final double WIDE_WINDOW_S = 4;
    /** No further than this from what was said, seconds, and in such steps. */
    private static final double MOST_S = 1.5;

    private static final double STEP_S = 0.05;
    /** How far off what was said is mostly, seconds. */
    private static final double SAID_S = 0.5;
    /** How far off its bend an aircraft flies, metres: the receiver's noise, and what the prediction does not know. */
    private static final double OFF_M = 3;
    /** How little a bend may differ in size, square metres: as if the bend predicted had been seen as well, so strongly. */
    private static final double SAME_SIZE_M2 = 300;
    /** A pull is begun so long before it has built up as predicted, which is at once, seconds. */
    private static final double BUILDS_UP_S = 0.2;
    /** A path bends in height if it is so far from straight, metres. */
    private static final double BENT_M = 2;

    private static final int FEWEST = 8;

    private final Bins bins;

    LookBack(FollowPlan plan) {
        bins = plan.bins;
    }

    /**
     * When a figure began.
     *
     * @param before the figure flown before it, without a pause between
     * @param figure the figure
     * @param saidS when it was said to begin
     * @param log readings in the order of time
     */
    double begin(int before, int figure, double saidS, List<Reading> log) {
        boolean unknown = bins.timed[bins.first[before]] || bins.timed[bins.first[figure]];
        // How a turn is rolled out of differs too much from pilot to pilot.
        if (unknown || bins.round[before]) {
            return saidS;
        }
        double windowS = within(WINDOW_S, saidS, log).size() < FEWEST ? WIDE_WINDOW_S : WINDOW_S;
        List<Reading> near = within(windowS, saidS, log);
        if (near.size() < FEWEST) {
            return saidS;
        }
        double[] t = near.stream().mapToDouble(r -> r.tS() - saidS).toArray();
        Join join = new Join(bins, before, figure);
        double flown = near.get(near.size() - 1).alongM() - near.get(0).alongM();
        double mirror = flown * join.alongM(windowS) - flown * join.alongM(-windowS) < 0 ? -1 : 1;
        double[][] seen = {
            bend(t, near, r -> mirror * r.alongM()), bend(t, near, Reading::awayM), bend(t, near, Reading::heightM)
        };
        double best = Double.POSITIVE_INFINITY;
        double later = 0;
        int steps = (int) Math.round(MOST_S / STEP_S);
        for (int k = -steps; k <= steps; k++) {
            double shift = k * STEP_S;
            double off = shift * shift / (SAID_S * SAID_S);
            for (int axis = 0; axis < seen.length; axis++) {
                off += misfit(seen[axis], join.bend(axis, t, shift)) / (OFF_M * OFF_M);
            }
            if (off < best) {
                best = off;
                later = shift;
            }
        }
        double[] height = join.bend(2, t, later);
        boolean pulls = !bins.round[figure] && squares(height) > BENT_M * BENT_M * t.length;
        return saidS + later - (pulls ? BUILDS_UP_S : 0);
    }

    private static List<Reading> within(double windowS, double saidS, List<Reading> log) {
        return log.stream().filter(r -> Math.abs(r.tS() - saidS) <= windowS).toList();
    }

    private static double[] bend(double[] t, List<Reading> near, ToDoubleFunction<Reading> place) {
        return Join.withoutItsLine(t, near.stream().mapToDouble(place).toArray());
    }

    /** Sum of squares that is left when the bend predicted is made as large as fits. */
    private static double misfit(double[] seen, double[] predicted) {
        double both = SAME_SIZE_M2;
        for (int i = 0; i < seen.length; i++) {
            both += seen[i] * predicted[i];
        }
        double size = both / (squares(predicted) + SAME_SIZE_M2);
        double sum = SAME_SIZE_M2 * (size - 1) * (size - 1);
        for (int i = 0; i < seen.length; i++) {
            double off = seen[i] - size * predicted[i];
            sum += off * off;
        }
        return sum;
    }

    private static double squares(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v * v;
        }
        return sum;
    }
}
