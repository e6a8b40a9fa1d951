package crowdline.live.state;

import java.util.List;

/**
 * An act that is over.
 *
 * @param actId its id
 * @param variant the variant it ended in
 * @param sequence what that variant meant to fly, with what was swapped and dropped
 * @param startedAtS when it began, seconds on the session's scale
 * @param endedAtS when it ended
 * @param flown what was flown
 */
public record FlownAct(
        String actId, String variant, Sequence sequence, double startedAtS, double endedAtS, List<Flown> flown) {
    public FlownAct {
        flown = List.copyOf(flown);
    }

    /** What the variant meant to fly, in its own order. */
    public List<String> figureIds() {
        return sequence.figureIds();
    }

    /** The same in the order they were to be flown, which differs if two were swapped. */
    public List<String> idsAsFlown() {
        return sequence.idsAsFlown();
    }

    /** Figures left out on purpose, and the ways to them. */
    public List<String> droppedIds() {
        return sequence.droppedIds();
    }
}
