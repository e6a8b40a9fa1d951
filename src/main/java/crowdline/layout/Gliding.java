package crowdline.layout;

/** How far a glider flies until it has another speed, by diving or climbing for it. */
final class Gliding {
    /** It comes nearer to the speed it is flown for by a factor of e in so many seconds; as runs are flown. */
    private static final double GAIN_S = 6;
    /** As near to it as makes no difference, m/s. */
    private static final double NEARLY_MPS = 0.5;

    private Gliding() {}

    /** How long a straight line a change of speed takes, metres; 0 if there is none to be made. */
    static double needM(double mps, Entry to) {
        double limit = Math.max(to.slowestMps(), Math.min(mps, to.fastestMps()));
        double missing = Math.abs(to.mps() - mps);
        double left = Math.max(Math.abs(to.mps() - limit), NEARLY_MPS);
        return limit == mps || missing <= left ? 0 : GAIN_S * (mps + to.mps()) / 2 * Math.log(missing / left);
    }
}
