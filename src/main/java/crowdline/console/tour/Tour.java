package crowdline.console.tour;

import crowdline.console.help.KeyedText;
import crowdline.console.place.Place;
import java.util.List;

/**
 * Where somebody is in the tour.
 *
 * @param steps all of them, at least one
 * @param at the one that is shown, from 0
 */
public record Tour(List<Step> steps, int at) {
    private static final String RESOURCE = "/crowdline/help/tour.txt";

    /**
     * One step.
     *
     * @param place where it is shown
     * @param pointsAt what it points at, by its accessible name; empty for nothing
     * @param words what it says
     */
    public record Step(Place place, String pointsAt, String words) {}

    public Tour {
        steps = List.copyOf(steps);
        if (at < 0 || at >= steps.size()) {
            throw new IllegalArgumentException("there is no step " + at + " of " + steps.size());
        }
    }

    /** The beginning of the tour that comes with the program. */
    public static Tour begin() {
        return new Tour(
                KeyedText.shipped(RESOURCE).stream()
                        .map(part -> new Step(
                                KeyedText.place(part.head()), part.about(), String.join(" ", part.paragraphs())))
                        .toList(),
                0);
    }

    public Step step() {
        return steps.get(at);
    }

    public boolean isLast() {
        return at == steps.size() - 1;
    }

    /** A step on; the last stays. */
    public Tour next() {
        return isLast() ? this : new Tour(steps, at + 1);
    }

    /** A step back; the first stays. */
    public Tour back() {
        return at == 0 ? this : new Tour(steps, at - 1);
    }

    /** Such as "3 of 12". */
    String where() {
        return (at + 1) + " of " + steps.size();
    }
}
