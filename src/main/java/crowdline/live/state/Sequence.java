package crowdline.live.state;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The figures of a variant and how they are to be flown. An index counts them as the variant has them, whatever is
 * swapped or dropped, so that durations, follower and journal need not know of it.
 *
 * @param figureIds ids in the variant's own order
 * @param order the indices of all of them in the order they are to be flown, which differs once two were swapped
 * @param droppedIds figures left out on purpose, in the order they were dropped; some may be of another variant
 */
public record Sequence(List<String> figureIds, List<Integer> order, List<String> droppedIds) {
    static final Sequence NONE = planned(List.of(), List.of());

    public Sequence {
        figureIds = List.copyOf(figureIds);
        order = List.copyOf(order);
        droppedIds = List.copyOf(droppedIds);
        if (order.size() != figureIds.size() || !new HashSet<>(order).equals(new HashSet<>(asPlanned(figureIds)))) {
            throw new IllegalArgumentException(
                    "order is " + order + "; it must name each of " + figureIds.size() + " figures once");
        }
    }

    /** A variant in its own order. */
    static Sequence planned(List<String> figureIds, List<String> droppedIds) {
        return new Sequence(figureIds, asPlanned(figureIds), droppedIds);
    }

    private static List<Integer> asPlanned(List<String> figureIds) {
        return IntStream.range(0, figureIds.size()).boxed().toList();
    }

    /** Which figure this is in the order flown, from 0; what is no index, as before and after the act, stays as it is. */
    int placeOf(int index) {
        return index < 0 || index >= order.size() ? index : order.indexOf(index);
    }

    /** The first figure flown after the one with this {@code index} that is not dropped. */
    OptionalInt nextIndexAfter(int index) {
        for (int place = placeOf(index) + 1; place < order.size(); place++) {
            if (!isDropped(order.get(place))) {
                return OptionalInt.of(order.get(place));
            }
        }
        return OptionalInt.empty();
    }

    /** The figures to be flown that changed sides with this one. */
    List<Integer> swappedWith(int index) {
        return toFly().stream()
                .filter(other -> other != index && other < index != placeOf(other) < placeOf(index))
                .toList();
    }

    List<Integer> toFly() {
        return order.stream().filter(index -> !isDropped(index)).toList();
    }

    List<String> idsAsFlown() {
        return order.stream().map(figureIds::get).toList();
    }

    Sequence withSwapped(int one, int other) {
        List<Integer> next = new ArrayList<>(order);
        Collections.swap(next, placeOf(one), placeOf(other));
        return new Sequence(figureIds, next, droppedIds);
    }

    /** With a figure directly after another. */
    Sequence withMoved(int index, int after) {
        List<Integer> next = new ArrayList<>(order);
        next.remove(Integer.valueOf(index));
        next.add(next.indexOf(after) + 1, index);
        return new Sequence(figureIds, next, droppedIds);
    }

    Sequence withDropped(List<String> next) {
        return new Sequence(figureIds, order, next);
    }

    private boolean isDropped(int index) {
        return droppedIds.contains(figureIds.get(index));
    }
}
