package crowdline.follow;

import java.util.SplittableRandom;

/**
 * How hard the world of a trial makes it.
 *
 * @param placeM how far off its place a line ends, standard deviation, metres
 * @param heightM the same of a line flown to a height
 * @param pullLagS how slowly a pull builds up, seconds
 * @param gustMps standard deviation of the gusts
 * @param real whether a level line is flown back to the height planned, and what is only timed is flown as such an
 *     aircraft flies it; otherwise heights stay as they come, and it is led there in whatever time it takes
 */
record Sky(double placeM, double heightM, double pullLagS, double gustMps, boolean real) {
    /** Flights as decision 45 tells of them, but for landings, which were faster there than such an aircraft flies. */
    static Sky gentle(double share) {
        return new Sky(250 * share, 150 * share, 0.3, 0.8, false);
    }

    /** Somebody who is less exact, in the same air. */
    static Sky other(SplittableRandom random) {
        Sky hard = hard(random);
        return new Sky(50 + 40 * random.nextDouble(), 20 + 20 * random.nextDouble(), hard.pullLagS, hard.gustMps, true);
    }

    /** Harder than the air over an aerodrome mostly is. */
    static Sky hard(SplittableRandom random) {
        return new Sky(
                30 + 30 * random.nextDouble(),
                15 + 15 * random.nextDouble(),
                0.35 + 0.45 * random.nextDouble(),
                0.8 + 1.2 * random.nextDouble(),
                true);
    }
}
