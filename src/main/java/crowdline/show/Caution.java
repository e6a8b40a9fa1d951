package crowdline.show;

/** What stands wherever predictions are shown. They serve the commentary and nothing else. */
public final class Caution {
    /** Who decides, whatever is predicted. */
    private static final String WHO_DECIDES = " display director, local rules and the pilot decide.";

    /** On a screen, which is always there. */
    public static final String ON_SCREEN = "Predictions are for commentary only; the" + WHO_DECIDES;

    /** On paper and in pictures, which are passed on. */
    public static final String ON_PAPER =
            "Predicted for commentary only, never for planning or judging a flight. The" + WHO_DECIDES;

    private Caution() {}
}
