package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Finds when a figure began, once what followed is known. Live, a bend can be told from a straight line only after it has
 * gone on for a while; afterwards the bend flown can be laid over the bend predicted. Where nothing bends, the answer is what
 * was said live.
 */
final class LookBack {
    /** Seconds of the path compared, before and after. More sees the bend better, but also the next one. */
    private static final double WINDOW_S = 2;
    /** Seconds, as above, where the shorter window has too few readings. */
    private static final double WIDE_WINDOW_S = 4;
    /** Seconds: the search goes no further than this from what was said. */
    private static final double MOST_S = 1.5;

    /** Seconds between two trials of the search; a quarter of the time between readings. */
    private static final double STEP_S = 0.05;
    /** Seconds: typical error of what was said live. Less trusts the bend less. */
    private static final double SAID_S = 0.5;
    /**
     * Metres: typical distance of a reading from the bend, from noise and an imperfect prediction. More trusts what was
     * said.
     */
    private static final double OFF_M = 3;
    /** Square metres: weight of the predicted size of the bend against the size seen. Less lets noise scale the bend. */
    private static final double SAME_SIZE_M2 = 300;
    /** Seconds: a pilot begins a pull this long before it has built up; the prediction has it at once. */
    private static final double BUILDS_UP_S = 0.2;
    /** Metres: a path further than this from straight, in height, bends. */
    private static final double BENT_M = 2;

    /** Readings: with fewer, nothing is compared. */
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
        // Pilots roll out of a turn in too many ways.
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
