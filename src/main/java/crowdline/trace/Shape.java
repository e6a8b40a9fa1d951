package crowdline.trace;

import java.util.Arrays;

/**
 * What is flown between two moments, whatever its size, place, direction and time: at even shares of the time, where it
 * flies to, as seen from how it came in, and how fast it is for how fast it came in.
 */
final class Shape {
    /** Moments of a shape. */
    private static final int POINTS = 48;
    /** Moments by which two shapes may be shifted against each other: lines within are as long as the pilot makes them. */
    private static final int SHIFT = 12;
    /** Weight of the speed against the direction. */
    private static final double SPEED = 0.6;

    /** How much of its speed at the beginning it still has where its direction counts in full: a half. Tuned. */
    private static final double FULL = 2;

    /** Weight of whether it bends against the direction. Tuned. */
    private static final double BEND = 0.15;
    /** Across the way: what bends so hard counts half as a bend. Tuned. */
    private static final double HALF_BEND_MPS2 = 6;

    /** What it costs to be shifted by one moment. */
    private static final double SHIFTED = 0.01;

    /** Weight of how hard it bends at the top. Tuned. */
    private static final double TOP = 0.15;
    /** Moments before and after the highest that are the top. */
    private static final int ABOUT_TOP = 3;
    /** On its back it flies against the way it came in, by so much at least. */
    private static final double BACK = -0.5;
    /** Of how hard it bends on the whole: whoever bends as hard at the top flies nothing there. Tuned. */
    private static final double ROUND = 0.75;

    private static final double STRAIGHT = 0.2;

    private final double[] forward = new double[POINTS];
    private final double[] side = new double[POINTS];
    private final double[] up = new double[POINTS];
    private final double[] speed = new double[POINTS];
    private final double[] bend = new double[POINTS];

    /** The least and the most climb, and the least speed, of the moments that one may be shifted to. */
    private final double[] lowest = new double[POINTS];

    private final double[] highest = new double[POINTS];
    private final double[] slowest = new double[POINTS];

    /**
     * Logarithm of how hard it bends at the top, on its back, for how hard on the whole: less where it rolls, flicks or flies
     * straight on; not a number where it is not on its back there.
     */
    private final double top;

    /** From a point of a path to another, both in it. */
    Shape(Path path, int from, int to) {
        double fx = path.tx[from];
        double fy = path.ty[from];
        double level = Math.hypot(fx, fy);
        fx = level > 1e-6 ? fx / level : 1;
        fy = level > 1e-6 ? fy / level : 0;
        double mps = Math.max(path.mps[from], 1);
        for (int k = 0; k < POINTS; k++) {
            int i = at(k, from, to);
            forward[k] = path.tx[i] * fx + path.ty[i] * fy;
            side[k] = -path.tx[i] * fy + path.ty[i] * fx;
            up[k] = path.tz[i];
            speed[k] = Math.min(path.mps[i] / mps, 2);
            double mps2 = path.bendMps2(i);
            bend[k] = mps2 / (mps2 + HALF_BEND_MPS2);
        }
        top = top(path, from, to);
        for (int k = 0; k < POINTS; k++) {
            lowest[k] = 1;
            highest[k] = -1;
            slowest[k] = 2;
            for (int i = Math.max(0, k - SHIFT); i <= Math.min(POINTS - 1, k + SHIFT); i++) {
                lowest[k] = Math.min(lowest[k], up[i]);
                highest[k] = Math.max(highest[k], up[i]);
                slowest[k] = Math.min(slowest[k], speed[i]);
            }
        }
    }

    private double top(Path path, int from, int to) {
        int highest = 0;
        double[] bends = new double[POINTS];
        for (int k = 0; k < POINTS; k++) {
            bends[k] = path.bendDegPerS(at(k, from, to));
            highest = path.zM[at(k, from, to)] > path.zM[at(highest, from, to)] ? k : highest;
        }
        if (highest < ABOUT_TOP || highest >= POINTS - ABOUT_TOP || forward[highest] > BACK) {
            return Double.NaN;
        }
        double bend = Arrays.stream(bends, highest - ABOUT_TOP, highest + ABOUT_TOP + 1)
                .average()
                .orElseThrow();
        double all = Arrays.stream(bends).average().orElseThrow();
        return Math.log(Math.max(STRAIGHT, Math.min(ROUND, bend / all)));
    }

    private static int at(int k, int from, int to) {
        return from + (int) Math.round((to - from) * (double) k / (POINTS - 1));
    }

    /** Whether it never climbs or dives more steeply. */
    boolean isFlatterThan(double deg) {
        double most = Math.sin(Math.toRadians(deg));
        return Arrays.stream(up).allMatch(u -> Math.abs(u) < most);
    }

    /** How far another is from this, from 0 for the same; either may be flown to the other side. */
    double distance(Shape other) {
        return distance(other, Double.POSITIVE_INFINITY);
    }

    /** The same, or anything greater than a bound if it is greater. */
    double distance(Shape other, double bound) {
        double off = top - other.top;
        double more = Double.isNaN(off) ? 0 : TOP * off * off;
        double left = bound - more;
        double least = atLeast(other);
        if (least > left) {
            return least + more;
        }
        double one = distance(other, 1, left);
        return more + Math.min(one, distance(other, -1, Math.min(one, left)));
    }

    /** The distance is no less: what climbs are too steep, however the moments are shifted. */
    double atLeast(Shape other) {
        double all = 0;
        for (int k = 0; k < POINTS; k++) {
            double off = Math.max(0, Math.max(other.up[k] - highest[k], lowest[k] - other.up[k]));
            all += Math.min(1, FULL * Math.min(slowest[k], other.speed[k])) * off * off;
        }
        return all / POINTS;
    }

    /** As in dynamic time warping: the least mean difference, where each moment of one has one of the other. */
    private double distance(Shape other, int sign, double bound) {
        double most = bound * POINTS;
        double[] before = new double[POINTS + 1];
        double[] now = new double[POINTS + 1];
        Arrays.fill(before, Double.POSITIVE_INFINITY);
        before[0] = 0;
        for (int i = 1; i <= POINTS; i++) {
            Arrays.fill(now, Double.POSITIVE_INFINITY);
            int low = Math.max(1, i - SHIFT);
            int high = Math.min(POINTS, i + SHIFT);
            double row = Double.POSITIVE_INFINITY;
            for (int j = low; j <= high; j++) {
                double least = Math.min(before[j - 1], Math.min(before[j], now[j - 1]) + SHIFTED);
                now[j] = least > most ? least : least + off(i - 1, other, j - 1, sign);
                row = Math.min(row, now[j]);
            }
            if (row > most) {
                return row / POINTS;
            }
            double[] swap = before;
            before = now;
            now = swap;
        }
        return before[POINTS] / POINTS;
    }

    private double off(int i, Shape other, int j, int sign) {
        double a = forward[i] - other.forward[j];
        double b = side[i] - sign * other.side[j];
        double c = up[i] - other.up[j];
        double d = SPEED * (speed[i] - other.speed[j]);
        // Hardly moving, at the top of a stall turn, it flies to wherever noise points.
        double moves = Math.min(1, FULL * Math.min(speed[i], other.speed[j]));
        double e = bend[i] - other.bend[j];
        return moves * (a * a + b * b + c * c + BEND * e * e) + d * d;
    }
}
