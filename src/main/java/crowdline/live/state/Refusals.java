package crowdline.live.state;

/** Why something is not possible now, where more than one command is refused for the same reason. */
public final class Refusals {
    /** Nothing can be done to an act before one is chosen. */
    public static final String NO_ACT_CHOSEN = "No act is chosen: press N for the next one.";

    /** What to press where no act is left to come. */
    public static final String FLY_AGAIN = "press R, then Ctrl+Enter, to fly one again.";

    static final String NOT_FOLLOWED = "The aircraft is not being followed now.";
    static final String ACT_IN_THE_AIR = "An act is still in the air: press E when it is over.";
    static final String NOT_IN_THE_ORDER = "That act is not in the running order of this show.";

    private Refusals() {}

    /** That the act is over, and what can be done then. */
    static String actOver(LiveState state) {
        return "The act is over"
                + (state.nextActId().isPresent()
                        ? ": press N for the next one."
                        : ", and no more are to come: " + FLY_AGAIN);
    }
}
