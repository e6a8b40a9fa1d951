package crowdline.layout;

/** How far a glider flies until it has another speed, by diving or climbing for it. */
final class Gliding {
    /** It comes nearer to the speed it is flown for by a factor of e in so many seconds; as runs are flown. */
    private static final double GAIN_S = 6;
    /** As near to it as makes no difference, m/s. */
    private static final double NEARLY_MPS = 0.5;

    /** It is flown for a little more than what does, as shares of the least and the most that does; tuned. */
    private static final double ABOVE_LEAST = 1.06;

    private static final double BELOW_MOST = 0.98;

    private Gliding() {}

    /** The speed it is flown for where it has less than does, m/s: it comes to one only slowly. */
    static double aimedMps(double mps, Entry to) {
        return mps < to.slowestMps()
                ? Math.max(to.mps(), Math.min(ABOVE_LEAST * to.slowestMps(), BELOW_MOST * to.fastestMps()))
                : to.mps();
    }

    /** How long a straight line a change of speed takes, metres; 0 if there is none to be made. */
    static double needM(double mps, Entry to) {
        double limit = Math.max(to.slowestMps(), Math.min(mps, to.fastestMps()));
        double aimed = aimedMps(mps, to);
        double missing = Math.abs(aimed - mps);
        double left = Math.max(Math.abs(aimed - limit), NEARLY_MPS);
        return limit == mps || missing <= left ? 0 : GAIN_S * (mps + limit) / 2 * Math.log(missing / left);
    }
}
