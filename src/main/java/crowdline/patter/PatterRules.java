package crowdline.patter;

import crowdline.measure.Must;

/**
 * The rules a plan keeps.
 *
 * @param breathS silence between two remarks, seconds, 0 or more
 * @param callEndsAtLeastBeforeS how long before its figure a call has ended at the latest, seconds, 0 or more
 * @param callEndsAtMostBeforeS how long before its figure a call has ended at the earliest, seconds, above the former
 * @param callStartsAtMostBeforeS how long before its figure a call starts at the earliest, seconds
 * @param runPastS how far a figure's remark may run past the end of the figure, seconds, 0 or more
 * @param spareS how far inside its window a remark new to the plan must lie, so that a drift of this size moves nothing,
 *     seconds, 0 or more
 * @param leastFillerGapS shortest stretch without anything else that a filler may go into, seconds, above 0
 * @param pastMomentS how long after the moment it is tied to a remark may still begin, seconds, 0 or more
 * @param openEndS how far ahead to plan when no figure is ahead, seconds, above 0
 */
public record PatterRules(
        double breathS,
        double callEndsAtLeastBeforeS,
        double callEndsAtMostBeforeS,
        double callStartsAtMostBeforeS,
        double runPastS,
        double spareS,
        double leastFillerGapS,
        double pastMomentS,
        double openEndS) {
    /** How long before a moment worth watching nothing else is said any more, seconds: to look up. Tuned. */
    static final double WATCH_BEFORE_S = 0.5;
    /** How long after it: it is seen and over. Tuned. */
    static final double WATCH_AFTER_S = 1.5;

    /**
     * Breath 0.6 s: the pause between sentences judged most natural (Liu et al., Frontiers in Psychology 13:778018,
     * 2022). A call ends 1 to 2 s before its figure: a design choice, from about 1 s between looking and naming and 1 to
     * 2 s to look up and refocus (FAA AC 90-48E); it starts at most 8 s before: a design choice, for the last spoken
     * instruction drivers preferred came 7.7 s ahead (Green &amp; George 1995). The rest are design choices without a
     * source: 3 s past a figure is still about that figure; 0.5 s is the drift nobody wants to see on a screen; 6 s
     * without a word is long enough for a filler; 2 s after a moment everybody still has it before their eyes; 60 s is as far as an open end is planned.
     */
    public static final PatterRules DEFAULT = new PatterRules(0.6, 1, 2, 8, 3, 0.5, 6, 2, 60);

    /** The same with an open end planned so far ahead, seconds, above 0. */
    public PatterRules withOpenEnd(double seconds) {
        return new PatterRules(
                breathS,
                callEndsAtLeastBeforeS,
                callEndsAtMostBeforeS,
                callStartsAtMostBeforeS,
                runPastS,
                spareS,
                leastFillerGapS,
                pastMomentS,
                seconds);
    }

    public PatterRules {
        Must.beAtLeast("breathS", breathS, 0);
        Must.beAtLeast("callEndsAtLeastBeforeS", callEndsAtLeastBeforeS, 0);
        Must.beAtLeast("callEndsAtMostBeforeS", callEndsAtMostBeforeS, callEndsAtLeastBeforeS + 0.1);
        Must.beAtLeast("callStartsAtMostBeforeS", callStartsAtMostBeforeS, callEndsAtMostBeforeS);
        Must.beAtLeast("runPastS", runPastS, 0);
        Must.beAtLeast("spareS", spareS, 0);
        Must.beAtLeast("leastFillerGapS", leastFillerGapS, 0.1);
        Must.beAtLeast("pastMomentS", pastMomentS, 0);
        Must.beAtLeast("openEndS", openEndS, 0.1);
    }
}
