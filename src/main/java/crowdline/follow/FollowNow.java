package crowdline.follow;

import java.util.List;

/**
 * What the follower says of the moment.
 *
 * @param tS the moment, on the scale of what the follower was given
 * @param state how it stands
 * @param figureIndex the figure most likely being flown, from 0; −1 before the act, the number of figures after it; off
 *     the plan, the figure that comes closest
 * @param elementIndex its element, from 0; 0 before and after the act
 * @param phase how far through the figure, as a share of its planned time, 0 to 1
 * @param confidence chance that this is the figure, or, off the plan, before and after the act, that it is so, 0 to 1
 * @param alternatives the figures that may be flown with their chances, most likely first, this one among them; chances
 *     under 5 % are left out
 * @param silentS seconds since a reading that could be believed; infinite if there was none
 */
public record FollowNow(
        double tS,
        State state,
        int figureIndex,
        int elementIndex,
        double phase,
        double confidence,
        List<Candidate> alternatives,
        double silentS) {

    /** Confidence, 0 to 1: above it the follower is sure; what may yet be wrong gets no more than this. */
    public static final double SURE = 0.9;

    /** How it stands. */
    public enum State {
        /** The act has not begun. */
        BEFORE,
        /** A figure of the plan is being flown. */
        ON_PLAN,
        /** Something is being flown that is not in the plan. */
        OFF_PLAN,
        /** Too little speaks for any one figure, or the receiver has fallen silent. */
        UNSURE,
        /** The act is over. */
        AFTER
    }

    /**
     * A figure that may be the one being flown.
     *
     * @param figureIndex from 0
     * @param chance 0 to 1
     */
    public record Candidate(int figureIndex, double chance) {}

    public FollowNow {
        alternatives = List.copyOf(alternatives);
    }

    /** True if it is sure of what it says: its confidence is over {@link #SURE}, and not at it, where doubt stands. */
    public boolean isSure() {
        return confidence > SURE;
    }
}
