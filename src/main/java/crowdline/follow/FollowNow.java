package crowdline.follow;

import java.util.List;
import java.util.Optional;

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

    /** Chance, 0 to 1, from which a second figure is named beside the first. Less names what is soon ruled out. */
    private static final double NAMED_TOO = 0.15;
    /** Share of a figure's time after which one of two is only ending while the other begins. */
    private static final double ENDING = 0.85;

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
     * @param phase how far through it the aircraft would be, as a share of its planned time, 0 to 1
     */
    public record Candidate(int figureIndex, double chance, double phase) {}

    public FollowNow {
        alternatives = List.copyOf(alternatives);
    }

    /**
     * The other figure it may be. Some begin alike, such as a loop and a half Cuban: until the difference shows both are to be
     * named, and it is sure of neither. Empty where one name will do, and where one figure is only leading into the other.
     */
    public Optional<Candidate> or() {
        boolean flown = state == State.ON_PLAN || state == State.UNSURE;
        return flown && !isSure() && phase < ENDING
                ? alternatives.stream()
                        .filter(c -> c.figureIndex() != figureIndex && c.chance() >= NAMED_TOO && c.phase() < ENDING)
                        .findFirst()
                : Optional.empty();
    }

    /** True if it is sure of what it says: its confidence is over {@link #SURE}, and not at it, where doubt stands. */
    public boolean isSure() {
        return confidence > SURE;
    }
}
