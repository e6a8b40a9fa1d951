package crowdline.follow;

/**
 * What may be said of a figure's chance. Where the order has changed lately, what looks certain is wrong more often than it
 * seems, for more than one figure looks the same; so nothing is called sure until the plan has come true again for some
 * figures. And as nobody tells of a change beforehand, no figure is called sure before it has shown itself.
 */
final class Doubt {
    /** From this chance on a figure is sure. Tuned. */
    private static final double SURE_FROM = 0.95;
    /** And not in its first seconds, which may be those of another. Tuned. */
    private static final double SHOWN_S = 4;

    /** So many figures that follow each other as planned end it. Tuned. */
    private static final int AS_PLANNED = 2;

    private final Order order;
    private int figure = -1;
    private int left;
    private int seen = -1;
    private double seenSinceS = Double.NEGATIVE_INFINITY;

    Doubt(Order order) {
        this.order = order;
    }

    /** This figure is more likely than not at this time, or none is: −1. Back by one is only a boundary not quite passed. */
    void sees(int likely, double tS) {
        if (likely != seen) {
            seen = likely;
            seenSinceS = tS;
        }
        boolean planned = figure < 0 ? left == 0 : likely == order.next(figure);
        if (likely < 0) {
            left = AS_PLANNED;
        } else if (planned) {
            figure = likely;
            left = Math.max(0, left - 1);
        } else if (likely != figure && order.next(likely) != figure) {
            figure = likely;
            left = AS_PLANNED;
        }
    }

    /** The hand says which figure it is. */
    void told(int told) {
        figure = told;
        seen = told;
        seenSinceS = Double.NEGATIVE_INFINITY;
        left = 0;
    }

    /** What is said at this time of a figure that is likely by this chance, 0 to 1. */
    double said(double chance, double tS) {
        boolean sure = left == 0 && chance >= SURE_FROM && tS - seenSinceS >= SHOWN_S;
        return sure ? chance : Math.min(chance, FollowNow.SURE);
    }
}
