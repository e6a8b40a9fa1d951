package crowdline.live.state;

import java.util.List;

/**
 * An act that is over.
 *
 * @param actId its id
 * @param variant the variant it ended in
 * @param figureIds what that variant meant to fly
 * @param idsAsFlown the same in the order they were to be flown, which differs if two were swapped
 * @param startedAtS when it began, seconds on the session's scale
 * @param endedAtS when it ended
 * @param droppedIds figures left out on purpose
 * @param flown what was flown
 */
public record FlownAct(
        String actId,
        String variant,
        List<String> figureIds,
        List<String> idsAsFlown,
        double startedAtS,
        double endedAtS,
        List<String> droppedIds,
        List<Flown> flown) {
    public FlownAct {
        figureIds = List.copyOf(figureIds);
        idsAsFlown = List.copyOf(idsAsFlown);
        droppedIds = List.copyOf(droppedIds);
        flown = List.copyOf(flown);
    }
}
