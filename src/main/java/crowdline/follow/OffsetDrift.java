package crowdline.follow;

/**
 * How what is believed of an aircraft's offsets grows less certain, from step to step and from figure to figure. All are
 * tuned.
 */
final class OffsetDrift {
    /** How fast the offsets may wander, square metres a second: (6 m)² of height, (8 m)² along. */
    private static final double HEIGHT_M2_PER_S = 36;

    private static final double ALONG_M2_PER_S = 64;
    private static final double AWAY_M2_PER_S = 20;
    /** And more where it climbs or dives, for each m/s: how a pull-out begins shifts all that comes after. */
    private static final double CLIMBING_M = 4;
    /** Where a figure only turns round, how wide depends on the speed it is taken up with. */
    private static final double ROUND_M2_PER_S = 150;

    /** Time in which what is believed of the speed loses its worth, seconds. */
    private static final double FASTER_KEPT_S = 20;

    private static final double KEEP_FASTER = Math.exp(-Motion.STEP_S / FASTER_KEPT_S);
    /** Share of it that is kept from one figure to the next. */
    private static final double KEEP_FASTER_NEXT = 0.6;

    /** What comes in to the first figure after a timed one is near where that begins. */
    private static final double LEAD_ALONG_M2 = 80 * 80;

    private static final double LEAD_HEIGHT_M2 = 40 * 40;

    /** Variance the offsets gain from one figure to the next, and where the order changes. */
    private static final double NEXT_HEIGHT_M2 = 70 * 70;

    private static final double NEXT_ALONG_M2 = 70 * 70;
    private static final double NEXT_AWAY_M2 = 10 * 10;
    private static final double ANYWHERE_HEIGHT_M2 = 90 * 90;
    private static final double ANYWHERE_ALONG_M2 = 500 * 500;

    /** How near its place and height the first figure begins in the air. */
    private static final double START_ALONG_M2 = 150 * 150;

    private static final double START_HEIGHT_M2 = 60 * 60;

    private final Bins bins;

    OffsetDrift(Bins bins) {
        this.bins = bins;
    }

    /** One step of time in a bin. */
    void step(Moments m, int bin) {
        if (bins.isLead(bin)) {
            m.set(Moments.of(m.chance, LEAD_ALONG_M2, LEAD_HEIGHT_M2));
        } else if (!bins.timed[bin]) {
            boolean round = bins.round[bins.figure[bin]];
            double climbing = CLIMBING_M * Math.abs(bins.vzMps[bin]);
            m.widen(Moments.ALONG, ((round ? ROUND_M2_PER_S : ALONG_M2_PER_S) + climbing) * Motion.STEP_S);
            m.widen(Moments.HEIGHT, (HEIGHT_M2_PER_S + climbing) * Motion.STEP_S);
            m.widen(Moments.AWAY, (round ? ROUND_M2_PER_S : AWAY_M2_PER_S) * Motion.STEP_S);
            m.fade(KEEP_FASTER);
        }
    }

    /** From the end of a figure to the start of the next one planned. */
    static void next(Moments m) {
        m.widen(Moments.ALONG, NEXT_ALONG_M2);
        m.widen(Moments.HEIGHT, NEXT_HEIGHT_M2);
        m.widen(Moments.AWAY, NEXT_AWAY_M2);
        m.fade(KEEP_FASTER_NEXT);
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
