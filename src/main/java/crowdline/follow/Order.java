package crowdline.follow;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * What may follow a figure: mostly the next of the plan, but it may be dropped, swapped or flown again, something unknown
 * may come between, or the flight breaks off. What has been flown already is less likely to come, what was passed over
 * more. Who knows of a change tells it with {@link #told}; then that order counts as the plan. All chances are tuned: high
 * enough that the answer is not sure before the aircraft has shown the difference.
 */
final class Order {
    private static final double NEXT = 0.7;
    private static final double AFTER_NEXT = 0.025;
    private static final double AGAIN = 0.02;
    private static final double ONE_BACK = 0.006;
    private static final double PASSED_OVER = 0.13;
    /** What was passed over more than two figures ago is left out by now. */
    private static final double LONG_AGO = 0.01;

    private static final double ANY = 0.001;
    private static final double OFF = 0.03;
    private static final double FLOWN_ALREADY = 0.05;

    private static final double FAR = 0.001;
    /** How much less likely what has been flown is to come after a stretch off the plan. */
    private static final double FLOWN_BEFORE = 0.97;

    /** What is only timed fits too much to be jumped to lightly. */
    private static final double TIMED = 0.02;

    /** A flight broken off ends with the last figure, if that is a landing. */
    private static final double TO_LAND = 0.003;

    private static final double OFF_TO_LAND = 0.1;

    private final Bins bins;
    private final int figures;
    /** How sure it is that each figure has been flown. */
    private final double[] flown;

    /** What is to come after each figure; the number of figures where nothing is. */
    private final int[] next;
    /** Where each figure stands in the order; one that is left out stands half a place after the figure before it. */
    private final double[] place;

    private int reached;

    Order(Bins bins) {
        this.bins = bins;
        figures = bins.figures;
        flown = new double[figures];
        next = new int[figures];
        place = new double[figures];
        told(IntStream.range(0, figures).boxed().toList());
    }

    /**
     * The order in which figures are to be flown.
     *
     * @param order each figure at most once; those left out are not to be flown
     */
    void told(List<Integer> order) {
        order.forEach(f -> Objects.checkIndex(f, figures));
        if (new HashSet<>(order).size() < order.size()) {
            throw new IllegalArgumentException("the order " + order + " names a figure twice");
        }
        double before = -1;
        for (int f = 0; f < figures; f++) {
            int at = order.indexOf(f);
            before = at >= 0 ? at : Math.floor(before);
            place[f] = at >= 0 ? at : before + 0.5;
            int after = (int) before + 1;
            next[f] = after < order.size() ? order.get(after) : figures;
        }
    }

    /** A figure was seen in its second half with this chance. */
    void saw(int f, double chance) {
        if (chance > flown[f]) {
            flown[f] = chance;
        }
        if (chance > 0.5) {
            reached = f;
        }
    }

    /** The hand says this figure begins: neither it nor what comes after has been flown. */
    void begins(int f) {
        for (int g = 0; g < figures; g++) {
            flown[g] = place[g] < place[f] ? flown[g] : 0;
        }
        reached = f;
    }

    /** What is to come after a figure; the number of figures where nothing is. */
    int next(int f) {
        return next[f];
    }

    double flown(int f) {
        return flown[f];
    }

    /** Fills in the chances of what comes after a figure: each figure, then off the plan, then after the act. */
    void after(int f, double[] row) {
        Arrays.fill(row, 0);
        double sum = 0;
        int coming = next[f];
        int second = coming < figures ? next[coming] : figures;
        for (int g = 0; g < figures; g++) {
            double w = ANY / figures;
            if (g == coming) {
                w += NEXT;
            } else if (g == second || g == f + 1) {
                w += AFTER_NEXT;
            } else if (g == f) {
                w += AGAIN;
            } else if (place[g] < place[f]) {
                w += next[g] == f ? ONE_BACK : 0;
                w += leftOut(g)
                        ? 0
                        : PASSED_OVER * Math.max(0, 1 - 2 * flown[g]) * (place[f] - place[g] <= 2 ? 1 : LONG_AGO);
            }
            if (g != coming && bins.timed[bins.first[g]]) {
                w = g == figures - 1 ? TO_LAND : w * TIMED;
            }
            if (g != f) {
                w *= 1 - (1 - FLOWN_ALREADY) * flown[g];
            }
            row[g] = w;
            sum += w;
        }
        if (coming == figures) {
            row[figures + 1] = NEXT;
            sum += NEXT;
        } else if (flown[coming] > 0.5) {
            // A swap that nobody told of: go on with the first after it that has not been flown.
            int g = second;
            while (g < figures && next[g] < figures && flown[g] > 0.5) {
                g = next[g];
            }
            if (g < figures) {
                double w = NEXT * flown[coming];
                row[g] += w;
                sum += w;
            }
        }
        row[figures] = OFF;
        sum += OFF;
        for (int i = 0; i < row.length; i++) {
            row[i] /= sum;
        }
    }

    private boolean leftOut(int f) {
        return place[f] != Math.rint(place[f]);
    }

    /** Fills in the chances of what comes after a stretch off the plan. */
    void afterUnknown(double[] row) {
        Arrays.fill(row, 0);
        double sum = 0;
        for (int g = 0; g < figures; g++) {
            double w = (FAR + Math.exp(-Math.abs(place[g] - place[reached] - 1) / 1.5)) * (1 - FLOWN_BEFORE * flown[g]);
            if (bins.timed[bins.first[g]]) {
                w = g == figures - 1 ? OFF_TO_LAND : w * TIMED;
            }
            row[g] = w;
            sum += w;
        }
        for (int g = 0; g < figures; g++) {
            row[g] /= sum;
        }
    }
}
