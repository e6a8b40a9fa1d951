package crowdline.live.state;

import crowdline.live.event.ShowEvent;

/** How the running order changes. */
final class ShowSteps {
    private ShowSteps() {}

    static Step next(LiveState state, ShowEvent event) {
        if (event instanceof ShowEvent.ShowOpened opened) {
            return new Step.Moved(state.withShow(opened.title(), opened.actIds()));
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
}
