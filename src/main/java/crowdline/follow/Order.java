package crowdline.follow;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * What may follow a figure. Mostly it is the next of the plan; but that may be dropped, swapped or flown again, something
 * unknown may come first, or the flight may break off. Whichever comes, the way that leads to it comes first. A figure flown before is less likely to come, one passed over is more
 * likely. A change that is known is told with {@link #told}; the new order then counts as the plan.
 *
 * <p>The weights below are relative to each other. Raising a change against {@link #NEXT} notices that change sooner and
 * loses the plan more often when it is flown as planned.
 */
final class Order {
    /** Weight of the next figure of the plan. */
    private static final double NEXT = 0.7;
    /** Weight of the one after it, or of the way that leads there: the next was dropped or swapped. */
    private static final double AFTER_NEXT = 0.025;
    /** Weight of the next figure without the way that leads to it. Tuned: 0.025 works too. */
    private static final double WAY_LEFT_OUT = 0.01;
    /** Weight of the same figure again. */
    private static final double AGAIN = 0.02;
    /**
     * Weight of the way that leads to it once more, but where a landing is due: its circuit begins as such a way does. Tuned:
     * 0.007 and 0.02 take other turns for it.
     */
    private static final double AGAIN_BY_WAY = 0.002;

    /** Weight of a figure passed over within the last two. */
    private static final double PASSED_OVER = 0.13;
    /** Factor on that weight once it is longer ago; by then it has been left out. */
    private static final double LONG_AGO = 0.01;

    /** Weight of something that is not in the plan. */
    private static final double OFF = 0.03;
    /** Factor on the weight of a figure flown before. */
    private static final double FLOWN_ALREADY = 0.05;

    private static final double FAR = 0.001;
    /** Share by which a figure flown before is less likely after a stretch off the plan. */
    private static final double FLOWN_BEFORE = 0.97;

    /** Factor on the weight of a figure that is only timed, which fits nearly any flight. */
    private static final double TIMED = 0.02;
    /** Weight of the landing, if the act ends with one, after any figure: the flight is broken off. */
    private static final double TO_LAND = 0.003;

    /** Weight of the landing after a stretch off the plan, against 1 for a figure that is due. */
    private static final double OFF_TO_LAND = 0.1;

    private static final int ANY = -1;

    private final Bins bins;
    private final int figures;
    /** Chance, 0 to 1, that each figure has been flown. */
    private final double[] flown;

    /** The figure planned after each; the number of figures after the last. */
    private final int[] next;
    /** Place of each figure in the order; one that is left out is half a place after the one before it. */
    private final double[] place;

    /** The first figure from each one on that is no way, itself if it is none; the number of figures if there is none. */
    private final int[] figureAt;
    /** How many figures of the order, ways not counted, come before each. */
    private final int[] number;
    /** Whether it is where a way begins. */
    private final boolean[] beginsWay;

    /** The last figure seen to be flown; {@link #ANY} where it may be any. */
    private int reached;

    Order(Bins bins) {
        this.bins = bins;
        figures = bins.figures;
        flown = new double[figures];
        next = new int[figures];
        place = new double[figures];
        figureAt = new int[figures];
        number = new int[figures];
        beginsWay = new boolean[figures];
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
        for (int f = 0; f < figures; f++) {
            int figure = f;
            while (figure < figures && isWay(figure)) {
                figure = next[figure];
            }
            figureAt[f] = figure;
            int end = f;
            number[f] = (int) order.stream()
                    .filter(g -> !isWay(g) && place[g] < place[end])
                    .count();
            int at = order.indexOf(f);
            beginsWay[f] = at >= 0 && isWay(f) && (at == 0 || !isWay(order.get(at - 1)));
        }
    }

    /** The act may have begun before it was heard of, so that any figure may come. */
    void isHeardLate() {
        reached = ANY;
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

    /** The figure planned after another; the number of figures after the last. */
    int next(int f) {
        return next[f];
    }

    double flown(int f) {
        return flown[f];
    }

    /** Fills in the chances of what comes after a figure: each figure, then off the plan, then after the act. */
    void after(int f, double[] row) {
        Arrays.fill(row, 0);
        int coming = next[f];
        int second = coming < figures ? next[coming] : figures;
        int due = coming < figures ? figureAt[coming] : figures;
        double sum = 0;
        for (int g = 0; g < figures; g++) {
            double w = weight(f, g, coming, due);
            if (g != coming && bins.timed[bins.first[g]]) {
                w = g == figures - 1 ? TO_LAND : w * TIMED;
            }
            if (g != f && !isAgain(f, g)) {
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

    /** How likely a figure, or a way, is to come after another, as far as the order says. */
    private double weight(int f, int g, int coming, int due) {
        if (g == coming) {
            return NEXT;
        }
        if (due < figures && g == next[due]) {
            return AFTER_NEXT;
        }
        if (g == due) {
            return WAY_LEFT_OUT;
        }
        if (g == f) {
            return AGAIN;
        }
        if (isAgain(f, g)) {
            return coming < figures && bins.timed[bins.first[coming]] ? 0 : AGAIN_BY_WAY;
        }
        return place[g] < place[f] && !leftOut(g)
                ? PASSED_OVER * Math.max(0, 1 - 2 * seen(g)) * (number[f] - number[g] <= 2 ? 1 : LONG_AGO)
                : 0;
    }

    /** The chance that a figure has been flown, or of a way that it has or that the figure has to which it leads. */
    private double seen(int g) {
        return figureAt[g] < figures ? Math.max(flown[g], flown[figureAt[g]]) : flown[g];
    }

    /** Whether a way is where that to a figure begins, so that it comes first where the figure is flown again. */
    private boolean isAgain(int f, int g) {
        return beginsWay[g] && figureAt[g] == f;
    }

    private boolean isWay(int f) {
        return bins.isWay(f);
    }

    private boolean leftOut(int f) {
        return place[f] != Math.rint(place[f]);
    }

    /**
     * Fills in the chances of what comes after a stretch off the plan.
     *
     * @return how much of the plan is left to come back to, 0 to 1
     */
    double afterUnknown(double[] row) {
        Arrays.fill(row, 0);
        double sum = 0;
        for (int g = 0; g < figures; g++) {
            double w = near(g) * (1 - FLOWN_BEFORE * flown[g]);
            if (bins.timed[bins.first[g]]) {
                w = g == figures - 1 ? OFF_TO_LAND : w * TIMED;
            }
            row[g] = w;
            sum += w;
        }
        for (int g = 0; g < figures; g++) {
            row[g] /= sum;
        }
        return Math.min(1, sum);
    }

    /** How likely a figure is to come for where it is in the order. */
    private double near(int g) {
        return reached == ANY ? 1 : FAR + Math.exp(-Math.abs(place[g] - place[reached] - 1) / 1.5);
    }
}
