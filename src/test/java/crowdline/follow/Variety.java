package crowdline.follow;

import java.util.SplittableRandom;

/**
 * How far flights of a trial differ from the plan.
 *
 * @param share standard deviation of what a pilot does, such as 0.1: a third of its variance goes with the flight, a
 *     third with the figure and a third with the element
 * @param mass factor
 * @param power factor
 * @param drag factor
 */
record Variety(double share, double mass, double power, double drag) {
    static Variety drawn(double share, SplittableRandom r) {
        return new Variety(share, 1 + share * 0.3 * bell(r), 1 + share * 0.5 * bell(r), 1 + share * bell(r));
    }

    static double bell(SplittableRandom r) {
        double b;
        do {
            b = r.nextGaussian();
        } while (Math.abs(b) > 2.5);
        return b;
    }
}
