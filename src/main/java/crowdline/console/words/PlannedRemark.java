package crowdline.console.words;

/**
 * What the plan of the whole act makes of a remark.
 *
 * @param standing in a word
 * @param words where it is said, or why it is not, in a sentence; empty if not known yet
 */
public record PlannedRemark(Standing standing, String words) {
    /** Nothing is known of it. */
    static final PlannedRemark NONE = new PlannedRemark(Standing.UNKNOWN, "");

    /** Where a remark stands in the plan. */
    public enum Standing {
        /** Not looked at yet, or its figure is not in the plan. */
        UNKNOWN,
        /** It is said in full. */
        SAID,
        /** It is said in full, but runs over if the figure flown meanwhile is a short one. */
        TIGHT,
        /** Only its short form is said. */
        SHORT,
        /** A filler, and there is no gap to fill. */
        NOT_NEEDED,
        /** It finds no place. */
        NO_PLACE
    }
}
