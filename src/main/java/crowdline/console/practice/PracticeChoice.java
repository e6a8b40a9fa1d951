package crowdline.console.practice;

import crowdline.practice.Level;

/**
 * What is to be practised.
 *
 * @param actId the act whose plan the flight does not keep to
 * @param level how little it keeps to it
 * @param seed the same choice with the same seed is the same flight
 */
public record PracticeChoice(String actId, Level level, long seed) {
    /** The largest seed: one that can still be said and written down. */
    public static final long MOST = 99_999;

    /** The same act and level in another flight. */
    public PracticeChoice next() {
        return new PracticeChoice(actId, level, seed >= MOST ? 1 : seed + 1);
    }
}
