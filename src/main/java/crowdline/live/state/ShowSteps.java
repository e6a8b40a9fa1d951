package crowdline.live.state;

import crowdline.live.event.ShowEvent;
import java.util.ArrayList;
import java.util.List;

/** How the running order changes. */
final class ShowSteps {
    private ShowSteps() {}

    static Step next(LiveState state, ShowEvent event) {
        if (event instanceof ShowEvent.ShowOpened opened) {
            return new Step.Moved(state.withShow(opened.title(), opened.actIds()));
        }
        if (event instanceof ShowEvent.ActCancelled cancelled) {
            return cancel(state, cancelled.actId());
        }
        if (event instanceof ShowEvent.ActReinstated reinstated) {
            if (!state.cancelledActIds().contains(reinstated.actId())) {
                return new Step.Refused("That act is not cancelled.");
            }
            return new Step.Moved(state.withCancelled(without(state.cancelledActIds(), reinstated.actId())));
        }
        Course course = state.course();
        if (course.inTheAir()) {
            return new Step.Refused(Refusals.ACT_IN_THE_AIR);
        }
        if (state.over()) {
            return new Step.Refused("The show is already over.");
        }
        return new Step.Moved(state.withCourse(course.withPhase(new Phase.ShowDone(event.atS())))
                .plusTakeBack(new TakeBack(event, course, null)));
    }

    private static Step cancel(LiveState state, String actId) {
        if (!state.runningOrder().contains(actId)) {
            return new Step.Refused(Refusals.NOT_IN_THE_ORDER);
        }
        if (state.cancelledActIds().contains(actId)) {
            return new Step.Refused("That act is already cancelled.");
        }
        if (actId.equals(state.actId()) && state.course().inTheAir()) {
            return new Step.Refused("That act is in the air: press E when it is over.");
        }
        List<String> ids = new ArrayList<>(state.cancelledActIds());
        ids.add(actId);
        return new Step.Moved(state.withCancelled(ids));
    }

    static List<String> without(List<String> ids, String id) {
        return ids.stream().filter(i -> !i.equals(id)).toList();
    }
}
