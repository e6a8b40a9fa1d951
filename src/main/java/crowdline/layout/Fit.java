package crowdline.layout;

import crowdline.flight.body.FlightState;

/**
 * Whether an aircraft is as a beginning wants it.
 *
 * @param sinks whether it has no power, so that the height there is has to do
 */
record Fit(boolean sinks) {
    /** Near enough to a height, metres. */
    static final double LEVEL_M = 8;
    /** Higher than wanted by this much is of no matter, metres. */
    static final double HIGH_M = 25;
    /** With as much less than the least speed that does nobody comes round again, as a share of it; by judgement. */
    static final double SLOW = 0.987;
    /** Nearer to the crowd than wanted by this much is of no matter, metres. */
    static final double CLOSE_M = 8;
    /** Sine of the heading towards the crowd beyond which it is put right before anything is begun; a degree. */
    private static final double SKEW = 0.0175;
    /** Further from it than wanted by this is of no matter, seconds of its flight; by judgement. */
    static final double FAR_S = 2;
    /** Cosine of the heading below which it flies across the line. */
    static final double ALONG = 0.8;

    /** Whether it flies to the crowd or away from it rather than along the line. */
    static boolean isAcross(FlightState at) {
        return Math.abs(at.direction().x()) < ALONG;
    }

    /** Whether it flies so far off the line towards the crowd that it would come over it: a figure begun so leads on that way. */
    static boolean isSkew(FlightState at) {
        return at.direction().y() < -SKEW;
    }

    /** Whether it is not as far from the crowd as wanted. */
    static boolean isOff(FlightState at, Entry to) {
        double asideM = at.place().y() - to.awayM();
        return !to.isAnyhow() && (asideM < -CLOSE_M || asideM > FAR_S * to.mps());
    }

    /** Whether height, speed and distance from the crowd do; a glider takes the height there is. */
    boolean isGood(FlightState at, Entry to) {
        return !isOff(at, to)
                && !(isSkew(at) && !to.isAnyhow())
                && at.speedMps() >= to.slowestMps()
                && at.speedMps() <= to.fastestMps()
                && (sinks || (lowM(at, to) <= LEVEL_M && lowM(at, to) >= -HIGH_M));
    }

    /** How far below the height wanted, metres; nothing where height is of no matter. */
    static double lowM(FlightState at, Entry to) {
        return to.slowestMps() == 0 && Double.isInfinite(to.fastestMps())
                ? 0
                : to.heightM() - at.place().z();
    }
}
