package crowdline.patter;

/**
 * A remark that found no place, and why.
 *
 * @param remarkId which remark
 * @param why in a word
 * @param reason one sentence with numbers, for the screen
 * @param neededS the shortest it can be said in, seconds
 * @param thereS the longest stretch left for it, seconds, 0 if none
 */
public record Unplaced(String remarkId, Why why, String reason, double neededS, double thereS) {
    /** Why a remark found no place. */
    public enum Why {
        /** Its figure is not among those being flown or ahead. */
        FIGURE_NOT_AHEAD,
        /** A later figure that is near has already been spoken of. */
        PASSED_OVER,
        /** Its time has passed. */
        TOO_LATE,
        /** It is longer than its own window. */
        TOO_LONG,
        /** A quiet leaves it no room. */
        QUIET,
        /** What weighs more takes the room. */
        CROWDED_OUT,
        /** A filler, and there is no stretch long enough to need it. */
        NO_GAP
    }
}
