package crowdline.follow;

import java.util.SplittableRandom;

/** One thing a pilot does more or less of: partly the whole flight long, partly by figure, partly by element. */
final class Habit {
    private static final double PART = Math.sqrt(1 / 3.0);

    private final double share;
    private final SplittableRandom random;
    private final double usual;
    private final double flight;
    private double figure;

    /** @param usual the factor of a pilot who does it just as planned is 1 */
    Habit(double share, double usual, SplittableRandom random) {
        this.share = share;
        this.usual = usual;
        this.random = random;
        flight = Variety.bell(random);
        nextFigure();
    }

    void nextFigure() {
        figure = Variety.bell(random);
    }

    /** A factor for the next element. */
    double factor() {
        return Math.max(0.4, usual + share * PART * (flight + figure + Variety.bell(random)));
    }
}
