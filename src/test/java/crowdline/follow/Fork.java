package crowdline.follow;

import java.util.SplittableRandom;

/**
 * One flight up to the beginning of a figure, and from there on otherwise: by another pilot in the same aircraft, place and state.
 *
 * @param at which of the figures flown, from 0
 * @param other 0 for the flight itself, and one number for each other pilot
 */
record Fork(int at, int other) {
    static final Fork NONE = new Fork(0, 0);

    /** Whether another pilot takes over with this figure. */
    boolean passes(int index, SplittableRandom random) {
        if (index != at || other == 0) {
            return false;
        }
        for (int k = 0; k < other; k++) {
            random.nextLong();
        }
        return true;
    }
}
