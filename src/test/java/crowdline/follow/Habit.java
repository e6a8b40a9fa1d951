package crowdline.follow;

import java.util.SplittableRandom;

/** One thing a pilot does more or less of: partly the whole flight long, partly by figure, partly by element. */
final class Habit {
    private static final double PART = Math.sqrt(1 / 3.0);

    private final double share;
    private final SplittableRandom random;
    private final double flight;
    private double figure;

    Habit(double share, SplittableRandom random) {
        this.share = share;
        this.random = random;
        flight = Variety.bell(random);
        nextFigure();
    }

    void nextFigure() {
        figure = Variety.bell(random);
    }

    /** A factor for the next element. */
    double factor() {
        return Math.max(0.4, 1 + share * PART * (flight + figure + Variety.bell(random)));
    }
}
