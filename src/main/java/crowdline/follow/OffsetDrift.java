package crowdline.follow;

/**
 * How what is believed of an aircraft's offsets grows less certain, from step to step and from figure to figure. The larger
 * these are, the sooner a change is followed, and the less an aircraft out of place speaks against a figure.
 */
final class OffsetDrift {
    /** Square metres a second: how fast the place along the A-axis wanders. */
    private static final double ALONG_M2_PER_S = 64;
    /** Square metres a second more for each m/s of climb or dive: how a pull-out begins shifts all that follows. */
    private static final double CLIMBING_M = 4;
    /** Square metres a second along the A-axis where a figure only turns round: how wide depends on the speed. */
    private static final double ROUND_M2_PER_S = 150;

    /** Seconds in which what is believed of the speed loses its worth. */
    private static final double FASTER_KEPT_S = 20;

    private static final double KEEP_FASTER = Math.exp(-Motion.STEP_S / FASTER_KEPT_S);
    /** Square metres: variance that the height gains from one figure to the next. */
    private static final double NEXT_HEIGHT_M2 = 70 * 70;

    /** Square metres: the same along the A-axis. */
    private static final double NEXT_ALONG_M2 = 70 * 70;
    /** Square metres: variance of the height where the order has changed, or it comes back to the plan. */
    private static final double ANYWHERE_HEIGHT_M2 = 90 * 90;
    /** Square metres: the same along the A-axis. */
    private static final double ANYWHERE_ALONG_M2 = 500 * 500;

    /** Square metres: variance along the A-axis where the act begins. */
    private static final double START_ALONG_M2 = 150 * 150;

    /** Square metres: the same of the height. */
    private static final double START_HEIGHT_M2 = 60 * 60;

    private final Bins bins;

    OffsetDrift(Bins bins) {
        this.bins = bins;
    }

    /** One step of time in a bin. */
    void step(Moments m, int bin) {
        if (!bins.timed[bin]) {
            boolean round = bins.round[bins.figure[bin]];
            double climbing = CLIMBING_M * Math.abs(bins.vzMps[bin]);
            m.widen(Moments.ALONG, ((round ? ROUND_M2_PER_S : ALONG_M2_PER_S) + climbing) * Motion.STEP_S);
            m.widen(Moments.HEIGHT, climbing * Motion.STEP_S);
            m.fade(KEEP_FASTER);
        }
    }

    /** From the end of a figure to the start of the next one planned. */
    static void next(Moments m) {
        m.widen(Moments.ALONG, NEXT_ALONG_M2);
        m.widen(Moments.HEIGHT, NEXT_HEIGHT_M2);
    }

    /** A chance of which nothing is known of the offsets. */
    static Moments anywhere(double chance) {
        return Moments.of(chance, ANYWHERE_ALONG_M2, ANYWHERE_HEIGHT_M2);
    }

    /** A chance of the first figure just begun. */
    static Moments start(double chance) {
        return Moments.of(chance, START_ALONG_M2, START_HEIGHT_M2);
    }
}
