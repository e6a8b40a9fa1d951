package crowdline.console.paint;

import crowdline.patter.Fit;

/** How much time is to spare, or how much too much is needed, in the same words everywhere; "0 s" says nothing. */
public final class Spare {
    private Spare() {}

    /**
     * A fit with what is to spare behind its word: "Fits, 4 s to spare", "Fits", "Too long by 3 s".
     *
     * @param spareS seconds there are more than needed, negative where they are fewer
     */
    public static Mark of(Fit fit, double spareS) {
        return FitMark.of(
                fit,
                switch (fit) {
                    case FITS -> spareS < 1 ? "" : ", " + Seconds.left(Math.floor(spareS)) + " to spare";
                    case JUST_FITS, ON_A_GOOD_DAY -> "";
                    case RUNS_OVER, TOO_LONG -> " by " + Seconds.left(Math.max(1, Math.ceil(-spareS)));
                });
    }

    /**
     * How far something is over its time: "3 s over"; nothing is over before the first whole second.
     *
     * @param overS seconds, 0 or more
     * @param left what is said until then, of the time that is up
     */
    public static String over(double overS, String left) {
        return Math.round(overS) < 1 ? left : Seconds.left(overS) + " over";
    }
}
