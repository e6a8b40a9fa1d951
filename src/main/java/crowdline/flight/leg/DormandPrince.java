package crowdline.flight.leg;

/**
 * One step of the Dormand–Prince pair of orders five and four, with an estimate of its error and the values in between.
 *
 * <p>Coefficients: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd edition (1993),
 * table II.5.2, and the continuous extension of order four of section II.6. The last slope of a step is the first of the
 * one after it, so that a step costs six evaluations.
 */
final class DormandPrince {
    /** Most coordinates a leg may have. */
    private static final int MOST = 8;

    private double[] k1 = new double[MOST];
    private final double[] k2 = new double[MOST];
    private final double[] k3 = new double[MOST];
    private final double[] k4 = new double[MOST];
    private final double[] k5 = new double[MOST];
    private final double[] k6 = new double[MOST];
    private double[] k7 = new double[MOST];
    private final double[] at = new double[MOST];
    /** What the points within the last step follow from, for each coordinate. */
    private final double[] gone = new double[MOST];

    private final double[] bend = new double[MOST];
    private final double[] twist = new double[MOST];
    private final double[] fourth = new double[MOST];
    private boolean followed;

    /** Begins at a point: finds the slopes there. */
    void begin(Leg leg, double t, double[] y) {
        leg.rates(t, y, k1);
    }

    /** Goes on from the end of the last step. */
    void goOn() {
        double[] swap = k1;
        k1 = k7;
        k7 = swap;
    }

    /** The slopes at the end of the last step. */
    double[] slopes() {
        return k7;
    }

    /**
     * Steps from the point begun at, or gone on to.
     *
     * @param h length of the step, seconds
     * @param next where the end of the step is written
     * @return the largest error of a coordinate, in proportion to the coordinate where that is above 1
     */
    double advance(Leg leg, double t, double[] y, double h, double[] next) {
        int n = y.length;
        followed = false;
        for (int i = 0; i < n; i++) {
            at[i] = y[i] + h * (1.0 / 5 * k1[i]);
        }
        leg.rates(t + h / 5, at, k2);
        for (int i = 0; i < n; i++) {
            at[i] = y[i] + h * (3.0 / 40 * k1[i] + 9.0 / 40 * k2[i]);
        }
        leg.rates(t + 3 * h / 10, at, k3);
        for (int i = 0; i < n; i++) {
            at[i] = y[i] + h * (44.0 / 45 * k1[i] - 56.0 / 15 * k2[i] + 32.0 / 9 * k3[i]);
        }
        leg.rates(t + 4 * h / 5, at, k4);
        for (int i = 0; i < n; i++) {
            at[i] = y[i]
                    + h
                            * (19372.0 / 6561 * k1[i]
                                    - 25360.0 / 2187 * k2[i]
                                    + 64448.0 / 6561 * k3[i]
                                    - 212.0 / 729 * k4[i]);
        }
        leg.rates(t + 8 * h / 9, at, k5);
        for (int i = 0; i < n; i++) {
            at[i] = y[i]
                    + h
                            * (9017.0 / 3168 * k1[i]
                                    - 355.0 / 33 * k2[i]
                                    + 46732.0 / 5247 * k3[i]
                                    + 49.0 / 176 * k4[i]
                                    - 5103.0 / 18656 * k5[i]);
        }
        leg.rates(t + h, at, k6);
        for (int i = 0; i < n; i++) {
            next[i] = y[i]
                    + h
                            * (35.0 / 384 * k1[i]
                                    + 500.0 / 1113 * k3[i]
                                    + 125.0 / 192 * k4[i]
                                    - 2187.0 / 6784 * k5[i]
                                    + 11.0 / 84 * k6[i]);
        }
        leg.rates(t + h, next, k7);
        double most = 0;
        for (int i = 0; i < n; i++) {
            double error = h
                    * (71.0 / 57600 * k1[i]
                            - 71.0 / 16695 * k3[i]
                            + 71.0 / 1920 * k4[i]
                            - 17253.0 / 339200 * k5[i]
                            + 22.0 / 525 * k6[i]
                            - 1.0 / 40 * k7[i]);
            most = Math.max(most, Math.abs(error) / Math.max(1, Math.abs(next[i])));
        }
        return most;
    }

    /**
     * A point within the last step.
     *
     * @param y where the step began
     * @param h its length, seconds
     * @param next where it ended
     * @param share of the step gone, 0 to 1
     * @param between where the point is written
     */
    void between(double[] y, double h, double[] next, double share, double[] between) {
        if (!followed) {
            follow(y, h, next);
        }
        double left = 1 - share;
        for (int i = 0; i < y.length; i++) {
            between[i] = y[i] + share * (gone[i] + left * (bend[i] + share * (twist[i] + left * fourth[i])));
        }
    }

    private void follow(double[] y, double h, double[] next) {
        followed = true;
        for (int i = 0; i < y.length; i++) {
            gone[i] = next[i] - y[i];
            bend[i] = h * k1[i] - gone[i];
            twist[i] = gone[i] - h * k7[i] - bend[i];
            fourth[i] = h
                    * (-12715105075.0 / 11282082432.0 * k1[i]
                            + 87487479700.0 / 32700410799.0 * k3[i]
                            - 10690763975.0 / 1880347072.0 * k4[i]
                            + 701980252875.0 / 199316789632.0 * k5[i]
                            - 1453857185.0 / 822651844.0 * k6[i]
                            + 69997945.0 / 29380423.0 * k7[i]);
        }
    }
}
