package crowdline.follow;

import java.util.SplittableRandom;

/**
 * How a pilot flies all flight long, unlike what was planned.
 *
 * @param pull factor on how hard arcs are pulled
 * @param rolls factor on how fast the aircraft rolls
 * @param pauses factor on how long it is held between
 * @param otherCircles whether what is planned with one load is flown with one radius, and the other way round
 */
record Manner(double pull, double rolls, double pauses, boolean otherCircles) {
    static final Manner AS_PLANNED = new Manner(1, 1, 1, false);

    static Manner drawn(SplittableRandom random) {
        return new Manner(
                0.85 + 0.4 * random.nextDouble(),
                0.75 + 0.5 * random.nextDouble(),
                0.7 + 0.7 * random.nextDouble(),
                true);
    }
}
