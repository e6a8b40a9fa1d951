package crowdline.follow;

/**
 * How sure the follower may say it is. After a change of order, what looks certain is wrong more often than its chance says,
 * because figures look alike; so nothing is called sure until two figures have again followed as planned. And because nobody
 * announces a change, no figure is called sure in its first seconds.
 */
final class Doubt {
    /**
     * Chance, 0 to 1, from which a figure is sure. Less is wrong more often, more is sure less often. Tuned: 0.94 is sure
     * half a per cent more of the time and wrong 0.04 % more, 0.985 half a per cent less and 0.02 %.
     */
    private static final double SURE_FROM = 0.97;
    /**
     * Seconds before a figure is called sure. Less is wrong more often, more is sure less often. Tuned: 2 is sure 6 % more
     * of the time and wrong 0.06 % more, half a per cent where the flight is broken off; 8 is sure 11 % less.
     */
    private static final double SHOWN_S = 4;

    /**
     * Figures that must follow as planned before doubt ends. Less is wrong more often, more is sure less often. Tuned: 1 is
     * sure half a per cent more of the time, 4 is sure 0.8 % less.
     */
    private static final int AS_PLANNED = 2;

    /** Seconds for which a step back by one figure is a boundary not quite passed. */
    private static final double BACK_S = 3;

    private final Order order;
    private int figure = -1;
    private int left;
    /** The last figure that would have fitted other flight as well; −1 if there was none. */
    private int loose = -1;

    private int seen = -1;
    private double seenSinceS = Double.NEGATIVE_INFINITY;

    Doubt(Order order) {
        this.order = order;
    }

    /**
     * Takes what is more likely than not. A step back by one figure is only a boundary not quite passed, unless it lasts:
     * then it may be flown again.
     *
     * @param likely a figure from 0; −1 if the aircraft is off the plan
     */
    void sees(int likely, double tS) {
        if (likely != seen) {
            seen = likely;
            seenSinceS = tS;
        }
        if (likely < 0) {
            left = AS_PLANNED;
        } else if (figure < 0) {
            figure = likely;
        } else if (figure >= 0 && likely == order.next(figure)) {
            left = loose == figure ? left : Math.max(0, left - 1);
            figure = likely;
        } else if (likely != figure && order.next(likely) != figure) {
            figure = likely;
            left = AS_PLANNED;
        } else if (likely != figure && tS - seenSinceS > BACK_S) {
            left = Math.max(left, 1);
        }
    }

    /**
     * What is flown is likely only because it is due; other flight would fit it as well. Having followed it as planned says
     * nothing.
     */
    void looksLike(int likely, double tS) {
        loose = likely;
        seenSinceS = Math.max(seenSinceS, tS);
    }

    /** The hand says which figure it is. */
    void told(int told) {
        figure = told;
        seen = told;
        seenSinceS = Double.NEGATIVE_INFINITY;
        left = 0;
    }

    /** The confidence to give, 0 to 1, in what has this chance. */
    double said(double chance, double tS) {
        boolean sure = left == 0 && chance >= SURE_FROM && tS - seenSinceS >= SHOWN_S;
        return sure ? chance : Math.min(chance, FollowNow.SURE);
    }
}
