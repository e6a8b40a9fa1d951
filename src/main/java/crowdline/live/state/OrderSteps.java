package crowdline.live.state;

import crowdline.live.event.FlightEvent;
import java.util.List;
import java.util.stream.IntStream;

/** How figures are left out and change places. */
final class OrderSteps {
    /** Seconds. Tuned: a follower that is wrong is put right sooner, in 4 s in the middle. */
    private static final double REALLY_FLOWN_S = 8;
    /** Figures: from further on nobody goes back to fly one that was left out; there the follower had been wrong. Judgement. */
    private static final int MOST_BETWEEN = 2;

    private OrderSteps() {}

    static Turn next(Course course, FlightEvent event) {
        if (event instanceof FlightEvent.NextDropped) {
            return nextDropped(course);
        }
        return event instanceof FlightEvent.DropUndone ? dropUndone(course) : nextSwapped(course);
    }

    private static Turn nextDropped(Course course) {
        int at = course.position();
        Sequence sequence = course.sequence();
        return sequence.figuresAfter(at)
                .findFirst()
                .<Turn>map(next -> new Turn.To(course.withSequence(sequence.withDropped(next, at))))
                .orElse(new Turn.No("There are no more figures to drop."));
    }

    private static Turn nextSwapped(Course course) {
        int at = course.position();
        Sequence sequence = course.sequence();
        List<Integer> two = sequence.figuresAfter(at).limit(2).toList();
        if (two.size() < 2) {
            return new Turn.No(
                    two.isEmpty()
                            ? "There are no more figures to swap."
                            : "Only one figure is left; it takes two to swap.");
        }
        return new Turn.To(course.withSequence(sequence.withSwapped(two.get(0), two.get(1), at)));
    }

    private static Turn dropUndone(Course course) {
        int at = course.position();
        Sequence sequence = course.sequence();
        for (int i = course.droppedIds().size() - 1; i >= 0; i--) {
            int index = course.figureIds().indexOf(course.droppedIds().get(i));
            if (index >= 0 && !sequence.isTransit(index) && course.placeOf(index) > course.placeOf(at)) {
                return new Turn.To(course.withSequence(sequence.withUndropped(index, at)));
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
                && figuresSince(course, index) <= MOST_BETWEEN
                && flown.stream()
                        .noneMatch(f -> f.figureId().equals(course.figureIds().get(index)));
    }

    /** How many figures are to be flown after this one until the one being flown, that one counted, without the ways to them. */
    private static long figuresSince(Course course, int index) {
        return IntStream.range(0, course.figureIds().size())
                .filter(i -> !course.sequence().isTransit(i))
                .filter(i -> course.placeOf(i) > course.placeOf(index)
                        && course.placeOf(i) <= course.placeOf(course.position()))
                .count();
    }

    static List<String> without(List<String> ids, String id) {
        return ids.stream().filter(i -> !i.equals(id)).toList();
    }
}
