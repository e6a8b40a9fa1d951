package crowdline.follow;

/** How far phase runs in one step of the filter: the chances of gaining 0, 1, 2 and more bins, by figure and tempo. */
final class PhaseGain {
    /** Bins: one more than the most that are gained in a step. */
    static final int REACH = 5;

    /** Square bins: least variance of phase gained in a step; a quarter is the least that whole bins allow. */
    private static final double LEAST_VARIANCE = 0.25;

    /** Square bins: the most variance. */
    private static final double MOST_VARIANCE = 0.75;
    /** Chances of gaining 1 to 4 bins on a line that may be cut short or drawn out, given that any are gained. */
    private static final double[] LEAPS = {0.375, 0.3125, 0.1875, 0.125};

    /** Bins: the mean of these. */
    private static final double LEAP = 2.0625;

    private final Bins bins;
    private final double[][] kernels;

    /**
     * @param rate of each figure, predicted seconds a second
     * @param variance of each figure, square seconds a second
     */
    PhaseGain(Bins bins, double[] rate, double[] variance) {
        this.bins = bins;
        kernels = new double[Lanes.TEMPOS * bins.figures * 2][];
        for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
            for (int f = 0; f < bins.figures; f++) {
                int k = tempo * bins.figures + f;
                double mean = rate[f] * Lanes.tempo(tempo) * Motion.STEP_S / Bins.WIDTH_S;
                double v = variance[f] * Motion.STEP_S / (Bins.WIDTH_S * Bins.WIDTH_S);
                kernels[2 * k] = kernel(mean, v);
                kernels[2 * k + 1] = elastic(mean);
            }
        }
    }

    private static double bounded(double meanBins) {
        return Math.min(Math.max(meanBins, 0.05), 1);
    }

    /** Chances of gaining 0, 1, 2 bins with this mean, and this variance as far as that allows. */
    static double[] kernel(double meanBins, double varianceBins2) {
        double mean = bounded(meanBins);
        double[] p = {1 - mean, mean, 0, 0, 0};
        double wanted = Math.min(Math.max(varianceBins2, LEAST_VARIANCE), MOST_VARIANCE);
        double moved = Math.min(Math.max(wanted - mean * (1 - mean), 0), mean);
        p[0] += moved / 2;
        p[1] -= moved;
        p[2] += moved / 2;
        return p;
    }

    /** The same for a line or a way that may be cut short or drawn out: the mean is kept. */
    static double[] elastic(double meanBins) {
        double some = bounded(meanBins) / LEAP;
        double[] p = new double[REACH];
        p[0] = 1 - some;
        for (int k = 1; k < REACH; k++) {
            p[k] = some * LEAPS[k - 1];
        }
        return p;
    }

    /** Chances of gaining 0, 1, 2 and more bins from a bin in a lane. */
    double[] of(int lane, int bin) {
        int k = lane % Lanes.TEMPOS * bins.figures + bins.figure[bin];
        return kernels[bins.elastic[bin] || bins.isWay(bins.figure[bin]) ? 2 * k + 1 : 2 * k];
    }
}
