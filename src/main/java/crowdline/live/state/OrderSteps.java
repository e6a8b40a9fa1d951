package crowdline.live.state;

import crowdline.live.event.FlightEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** How figures are left out and change places. */
final class OrderSteps {
    /** Seconds. Tuned: a follower that is wrong is put right sooner, in 4 s in the middle. */
    private static final double REALLY_FLOWN_S = 8;

    private OrderSteps() {}

    static Turn next(Course course, FlightEvent event) {
        if (event instanceof FlightEvent.NextDropped) {
            return nextDropped(course);
        }
        return event instanceof FlightEvent.DropUndone ? dropUndone(course) : nextSwapped(course);
    }

    private static Turn nextDropped(Course course) {
        OptionalInt next = course.nextIndex();
        if (next.isEmpty()) {
            return new Turn.No("No figure is left to drop.");
        }
        List<String> dropped = new ArrayList<>(course.droppedIds());
        dropped.add(course.figureIds().get(next.getAsInt()));
        return new Turn.To(course.withDropped(dropped));
    }

    private static Turn nextSwapped(Course course) {
        OptionalInt next = course.nextIndex();
        OptionalInt after = next.isPresent() ? course.nextIndexAfter(next.getAsInt()) : OptionalInt.empty();
        if (next.isEmpty() || after.isEmpty()) {
            return new Turn.No(
                    next.isEmpty() ? "No figure is left to swap." : "Only one figure is left; it takes two to swap.");
        }
        return new Turn.To(course.withSwapped(next.getAsInt(), after.getAsInt()));
    }

    private static Turn dropUndone(Course course) {
        for (int i = course.droppedIds().size() - 1; i >= 0; i--) {
            String id = course.droppedIds().get(i);
            int index = course.figureIds().indexOf(id);
            if (index >= 0 && course.placeOf(index) > course.placeOf(course.position())) {
                return new Turn.To(course.withDropped(without(course.droppedIds(), id)));
            }
        }
        return new Turn.No("No figure ahead is dropped.");
    }

    /**
     * A figure before the one being flown that was not flown yet: the two were swapped, and nobody had said so. One that was
     * seen only for a moment was not flown; then the follower takes back what it said.
     */
    static boolean isPassedOver(Course course, FlightEvent.AircraftSeen event) {
        int index = event.index();
        List<Flown> flown = course.flown();
        return !flown.isEmpty()
                && event.atS() - flown.get(flown.size() - 1).startedAtS() >= REALLY_FLOWN_S
                && course.position() >= 0
                && course.position() < course.figureIds().size()
                && index < course.figureIds().size()
                && course.placeOf(index) < course.placeOf(course.position())
                && flown.stream()
                        .noneMatch(f -> f.figureId().equals(course.figureIds().get(index)));
    }

    static List<String> without(List<String> ids, String id) {
        return ids.stream().filter(i -> !i.equals(id)).toList();
    }
}
