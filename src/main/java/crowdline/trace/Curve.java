package crowdline.trace;

import java.util.Arrays;

/**
 * Places between readings that are far apart, on the curve through all of them whose slope at each is that of the parabola
 * through it and its neighbours (a cubic Hermite spline). Straight from one to the next a loop would be a polygon.
 */
final class Curve {
    /** Seconds: between readings nearer than this nothing is put. */
    private static final double APART_S = 0.5;
    /** Seconds: over a longer gap nobody knows how it flew. */
    private static final double GAP_S = 5;
    /** Seconds from one place to the next within a gap, at most. */
    private static final double STEP_S = 0.25;

    final double[] tS;
    final double[][] places;

    /**
     * @param tS rising
     * @param places at these times, a row for each of their parts
     */
    Curve(double[] tS, double[][] places) {
        int n = tS.length;
        double[] t = new double[n + (int) ((tS[n - 1] - tS[0]) / STEP_S) + 1];
        double[][] p = new double[places.length][t.length];
        int size = 0;
        for (int i = 0; i < n; i++) {
            size = put(t, p, size, tS[i], places, i, tS);
            double gap = i + 1 < n ? tS[i + 1] - tS[i] : 0;
            int parts = gap > APART_S && gap <= GAP_S ? (int) Math.ceil(gap / STEP_S) : 1;
            for (int k = 1; k < parts; k++) {
                size = put(t, p, size, tS[i] + gap * k / parts, places, i, tS);
            }
        }
        this.tS = Arrays.copyOf(t, size);
        this.places = new double[places.length][];
        for (int d = 0; d < places.length; d++) {
            this.places[d] = Arrays.copyOf(p[d], size);
        }
    }

    private static int put(double[] t, double[][] p, int at, double when, double[][] places, int i, double[] tS) {
        t[at] = when;
        for (int d = 0; d < p.length; d++) {
            p[d][at] = when == tS[i] ? places[d][i] : between(tS, places[d], i, when);
        }
        return at + 1;
    }

    private static double between(double[] tS, double[] v, int i, double when) {
        double h = tS[i + 1] - tS[i];
        double s = (when - tS[i]) / h;
        double a = slope(tS, v, i);
        double b = slope(tS, v, i + 1);
        return v[i] * (1 + 2 * s) * (1 - s) * (1 - s)
                + v[i + 1] * s * s * (3 - 2 * s)
                + h * s * (1 - s) * (a * (1 - s) - b * s);
    }

    private static double slope(double[] tS, double[] v, int i) {
        int n = tS.length;
        if (i == 0 || i == n - 1) {
            int k = i == 0 ? 0 : n - 2;
            return (v[k + 1] - v[k]) / (tS[k + 1] - tS[k]);
        }
        double before = tS[i] - tS[i - 1];
        double after = tS[i + 1] - tS[i];
        return ((v[i] - v[i - 1]) / before * after + (v[i + 1] - v[i]) / after * before) / (before + after);
    }
}
