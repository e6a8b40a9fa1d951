package crowdline.follow;

/**
 * A figure that only leads from one to the next: a turn round, a run to where the next begins. No two pilots take the same
 * path, and none takes the time planned; what they keep to is between the least and the greatest that is planned about then.
 *
 * @param lowestM height above the datum
 * @param highestM height above the datum
 * @param sinkMps least climb, upwards
 * @param climbMps greatest climb, upwards
 * @param slowestMps over the ground
 * @param fastestMps over the ground
 */
record Way(double lowestM, double highestM, double sinkMps, double climbMps, double slowestMps, double fastestMps) {
    /**
     * Ratio: a way flown in any path, against any flight at all. As much as for a figure that is only timed, so that what
     * is due decides between the two. Tuned: 1e3 costs 1 %, 6e3 costs 1 %.
     */
    private static final double FIT = 3e3;

    /**
     * Seconds before and after for which what is planned may be flown now, for nobody keeps to its times. Tuned: 5 works, and 20
     * gains a third. Without end a dive from a kilometre up explains level flight at any height below, for as long as that takes.
     */
    private static final double AROUND_S = 10;

    /** Metres: how far off its heights it is flown. Tuned: 100 works too. */
    private static final double HEIGHT_M = 60;
    /** Factor on the ratio where the height does not fit at all. */
    private static final double HEIGHT_FLOOR = 0.01;
    /** Metres a second: how much faster it climbs or sinks. */
    private static final double CLIMB_MPS = 6;
    /** Factor on the ratio where the climb does not fit at all. */
    private static final double CLIMB_FLOOR = 0.003;
    /** Seconds in which an aircraft that comes in too low or too high is back at the height planned. */
    private static final double BACK_S = 5;
    /** Slope at which it climbs or sinks to it at most. */
    private static final double BACK_SLOPE = 0.35;
    /** Metres between the lowest and the highest of a way that is level. */
    private static final double LEVEL_M = 20;

    /** Share of the speed by which it is flown faster or slower. */
    private static final double SPEED_SHARE = 0.2;
    /** Factor on the ratio where the speed does not fit at all. */
    private static final double SPEED_FLOOR = 0.03;
    /** Factor on the ratio at its end, where the path is the way in to the next figure. */
    private static final double LEAD = 0.1;

    /** What is planned around a bin of such a figure. */
    static Way around(Bins bins, int bin) {
        int f = bins.figure[bin];
        int near = (int) Math.round(AROUND_S / Bins.WIDTH_S);
        int from = Math.max(bins.first[f], bin - near);
        int to = Math.min(bins.first[f + 1], bin + near + 1);
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        double sink = 0;
        double climb = 0;
        double slowest = Double.POSITIVE_INFINITY;
        double fastest = 0;
        for (int i = from; i < to; i++) {
            double mps = Math.hypot(bins.vxMps[i], bins.vyMps[i]);
            lowest = Math.min(lowest, bins.zM[i]);
            highest = Math.max(highest, bins.zM[i]);
            sink = Math.min(sink, bins.vzMps[i]);
            climb = Math.max(climb, bins.vzMps[i]);
            slowest = Math.min(slowest, mps);
            fastest = Math.max(fastest, mps);
        }
        return new Way(lowest, highest, sink, climb, slowest, fastest);
    }

    /**
     * How well a reading fits, whatever path is taken, as a ratio like those of {@link Evidence}. A way begins wherever the
     * figure before it has ended, and leads back to its heights from there.
     *
     * @param atEnd whether it is on its last part, where its path is known
     * @param higherM how much higher than planned the aircraft is believed to have come in
     */
    double fit(Seen seen, boolean atEnd, double higherM) {
        double fit = FIT * (atEnd ? LEAD : 1);
        double off = outside(seen.heightM(), lowestM + Math.min(0, higherM), highestM + Math.max(0, higherM));
        fit *= Evidence.near(off / HEIGHT_M, HEIGHT_FLOOR);
        if (seen.hasClimb()) {
            double most = seen.hasSpeeds() ? BACK_SLOPE * seen.groundMps() : Double.POSITIVE_INFINITY;
            double climb = climbMps + Math.min(Math.max(0, -higherM) / BACK_S, most);
            double sink = sinkMps - Math.min(Math.max(0, higherM) / BACK_S, most);
            fit *= Evidence.near(outside(seen.climbMps(), sink, climb) / CLIMB_MPS, CLIMB_FLOOR);
        }
        if (seen.hasSpeeds()) {
            double over = outside(seen.groundMps(), slowestMps, fastestMps);
            fit *= Evidence.near(over / (SPEED_SHARE * fastestMps), SPEED_FLOOR);
        }
        return fit;
    }

    /** Whether it keeps one height, so that the place along it tells nothing of the height. */
    boolean isLevel() {
        return highestM - lowestM < LEVEL_M;
    }

    /** How far a value is outside two others. */
    static double outside(double value, double low, double high) {
        return Math.max(0, Math.max(low - value, value - high));
    }
}
