package crowdline.arrange;

import crowdline.layout.Piece;
import crowdline.layout.Transit;

/** How a transit is called, and what there is to see in it. */
record TransitWords(String title, String look) {
    /** Higher than before by this much it is a climb, whatever else it is; metres. */
    private static final double CLIMB_M = 60;

    /** Cosine of the way along the line; flown less along it than this it is flown across. */
    private static final double ALONG = 0.8;

    /** Until then what runs in is towed. */
    private static final String LETTING_GO = "tow release";

    /** @param to the figure it leads to; empty if none follows at once */
    static TransitWords of(Transit transit, Piece first, Piece last, boolean engine, String to) {
        String out = first.from().toRight() ? "right" : "left";
        String from = last.to().toRight() ? "left" : "right";
        boolean climbs = last.to().place().z() - first.from().place().z() > CLIMB_M;
        return switch (transit) {
            case RUNS_IN ->
                to.equals(LETTING_GO)
                        ? new TransitWords("on the tow", "Look to the " + from + ": here it comes, still on its rope.")
                        : new TransitWords("running in", "Look to the " + from + ": here it comes.");
            case FLIES_ON ->
                new TransitWords(
                        "flying on to the " + out, "It flies on to the " + out + ", to where the next figure begins.");
            case CLIMBS -> new TransitWords("climbing", "It is climbing, to gain height for what comes next.");
            case DIVES ->
                new TransitWords("diving for speed", "The nose goes down a little, and height turns into speed.");
            case COMES_IN ->
                new TransitWords(
                        "coming in to the line",
                        climbs
                                ? "It is climbing as it comes back in to the display line."
                                : "It is coming back in to the display line.");
            case SLOWS_DOWN ->
                new TransitWords(
                        "slowing down",
                        engine
                                ? "Listen: the power comes off, and it slows down."
                                : "It slows down for what comes next.");
            case TURNS_BACK ->
                first.equals(last) || isAcross(first)
                        ? new TransitWords(
                                climbs ? "climbing and turning back" : "turning back",
                                isAcross(first)
                                        ? "It turns round out there, and comes back along the line from the " + from
                                                + "."
                                        : (climbs ? "It climbs out to the " : "It flies out to the ") + out
                                                + ", turns away from you, and comes back.")
                        : new TransitWords(
                                climbs ? "climbing and coming round again" : "coming round again",
                                (climbs ? "It climbs all the way round behind" : "It goes all the way round behind")
                                        + ", to come in from the " + from + " again.");
            case TURNS_UP ->
                new TransitWords(
                        "climbing turn",
                        "It pulls up as it turns away from you, speed turning into height, and comes back from the "
                                + from + ".");
            case ROLLS_UPRIGHT -> new TransitWords("rolling upright", "Half a roll, and it is the right way up again.");
        };
    }

    /** Whether it begins on the way out to the far side or in from there, not along the line. */
    private static boolean isAcross(Piece first) {
        return Math.abs(first.from().direction().x()) < ALONG;
    }
}
