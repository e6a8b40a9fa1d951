package crowdline.follow;

/**
 * Whether the order has changed lately. Where it has, what looks certain is wrong more often than it seems, for more than
 * one figure looks the same; so nothing is called sure until the plan has come true again for some figures.
 */
final class Doubt {
    /** No more than this is believed of a figure meanwhile. */
    static final double MOST = 0.9;

    /** So many figures that follow each other as planned end it. Tuned. */
    private static final int AS_PLANNED = 2;

    private final Order order;
    private int figure = -1;
    private int left;

    Doubt(Order order) {
        this.order = order;
    }

    /** This figure is more likely than not, or none is: −1. Back by one is only a boundary not quite passed. */
    void sees(int likely) {
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
        left = 0;
    }

    boolean isOn() {
        return left > 0;
    }
}
