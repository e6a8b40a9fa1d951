package crowdline.live.state;

import crowdline.live.event.ShowEvent;

/** How the running order changes. */
final class ShowSteps {
    private static final String FLOWN = "That act has already been flown; it stays where it is.";

    private ShowSteps() {}

    static Step next(LiveState state, ShowEvent event) {
        if (event instanceof ShowEvent.ShowOpened opened) {
            return new Step.Moved(state.withShow(opened.title(), state.day().opened(opened.actIds())));
        }
        if (state.over()) {
            return new Step.Refused("The show is already over.");
        }
        if (event instanceof ShowEvent.ActsMoved moved) {
            return moved(state, moved);
        }
        if (event instanceof ShowEvent.ActsSwapped swapped) {
            return swapped(state, swapped);
        }
        if (event instanceof ShowEvent.ActCancelled cancelled) {
            return cancelled(state, cancelled);
        }
        if (event instanceof ShowEvent.ActRestored restored) {
            return state.day().isCancelled(restored.actId())
                    ? day(state, event, state.day().withCancelled(restored.actId(), false))
                    : new Step.Refused("That act is not cancelled.");
        }
        if (event instanceof ShowEvent.ActAdded added) {
            return added(state, added);
        }
        Course course = state.course();
        if (course.inTheAir()) {
            return new Step.Refused(Refusals.ACT_IN_THE_AIR);
        }
        return new Step.Moved(state.withCourse(course.withPhase(new Phase.ShowDone(event.atS())))
                .plusTakeBack(new TakeBack(event, course, null)));
    }

    private static Step day(LiveState state, ShowEvent event, Day next) {
        return new Step.Moved(state.withDay(next).plusTakeBack(TakeBack.ofDay(event, state.day())));
    }

    private static Step moved(LiveState state, ShowEvent.ActsMoved event) {
        if (event.actIds().isEmpty()) {
            return new Step.Refused("There are no more acts to move.");
        }
        return state.runningOrder().containsAll(event.actIds())
                ? day(state, event, state.day().moved(event.actIds(), event.byS()))
                : new Step.Refused(Refusals.NOT_IN_THE_ORDER);
    }

    private static Step swapped(LiveState state, ShowEvent.ActsSwapped event) {
        if (!state.runningOrder().contains(event.firstId())
                || !state.runningOrder().contains(event.secondId())
                || event.firstId().equals(event.secondId())) {
            return new Step.Refused(Refusals.NOT_IN_THE_ORDER);
        }
        if (!state.isStillToCome(event.firstId()) || !state.isStillToCome(event.secondId())) {
            return new Step.Refused("One of the two has begun; only acts that have not begun can change places.");
        }
        return day(state, event, state.day().swapped(event));
    }

    private static Step cancelled(LiveState state, ShowEvent.ActCancelled event) {
        String id = event.actId();
        if (!state.runningOrder().contains(id)) {
            return new Step.Refused(Refusals.NOT_IN_THE_ORDER);
        }
        if (state.day().isCancelled(id)) {
            return new Step.Refused("That act is cancelled already.");
        }
        Course course = state.course();
        boolean isChosen = id.equals(state.actId());
        if (isChosen && course.inTheAir()) {
            return new Step.Refused("That act is in the air: press E when it is over.");
        }
        if (state.flown(id)) {
            return new Step.Refused(FLOWN);
        }
        Day day = state.day().withCancelled(id, true);
        return isChosen
                ? new Step.Moved(state.withDay(day)
                        .withCourse(course.withoutAct())
                        .plusTakeBack(TakeBack.ofDay(event, state.day()).with(course)))
                : day(state, event, day);
    }

    private static Step added(LiveState state, ShowEvent.ActAdded event) {
        String after = event.afterId();
        if (state.runningOrder().contains(event.actId())) {
            return new Step.Refused("There is an act of that name already.");
        }
        return after == null || state.runningOrder().contains(after)
                ? day(state, event, state.day().plus(event))
                : new Step.Refused(Refusals.NOT_IN_THE_ORDER);
    }
}
