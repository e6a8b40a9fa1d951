package crowdline.live;

import java.util.List;

/**
 * An act that is over.
 *
 * @param actId its id
 * @param variant the variant it ended in
 * @param figureIds what that variant meant to fly
 * @param startedAtS when it began, seconds on the session's scale
 * @param endedAtS when it ended
 * @param droppedIds figures left out on purpose
 * @param flown what was flown
 */
public record FlownAct(
        String actId,
        String variant,
        List<String> figureIds,
        double startedAtS,
        double endedAtS,
        List<String> droppedIds,
        List<Flown> flown) {
    public FlownAct {
        figureIds = List.copyOf(figureIds);
        droppedIds = List.copyOf(droppedIds);
        flown = List.copyOf(flown);
    }
}
