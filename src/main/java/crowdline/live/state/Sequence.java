package crowdline.live.state;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The figures of a variant and how they are to be flown. An index counts them as the variant has them, whatever is
 * swapped or dropped, so that durations, follower and journal need not know of it.
 *
 * @param figureIds ids in the variant's own order
 * @param transitIds those of them that are only the way to the next figure, and go where it goes
 * @param order the indices of all of them in the order they are to be flown, which differs once two were swapped
 * @param droppedIds figures left out on purpose, in the order they were dropped; some may be of another variant
 */
public record Sequence(List<String> figureIds, List<String> transitIds, List<Integer> order, List<String> droppedIds) {
    static final Sequence NONE = planned(List.of(), List.of());

    public Sequence {
        figureIds = List.copyOf(figureIds);
        transitIds = List.copyOf(transitIds);
        order = List.copyOf(order);
        droppedIds = List.copyOf(droppedIds);
        if (order.size() != figureIds.size() || !new HashSet<>(order).equals(new HashSet<>(asPlanned(figureIds)))) {
            throw new IllegalArgumentException(
                    "order is " + order + "; it must name each of " + figureIds.size() + " figures once");
        }
    }

    /** A variant in its own order, of which nothing is dropped. */
    public static Sequence planned(List<String> figureIds, List<String> transitIds) {
        return new Sequence(figureIds, transitIds, asPlanned(figureIds), List.of());
    }

    private static List<Integer> asPlanned(List<String> figureIds) {
        return IntStream.range(0, figureIds.size()).boxed().toList();
    }

    /** The ids of all figures in the order they are to be flown. */
    public List<String> idsAsFlown() {
        return order.stream().map(figureIds::get).toList();
    }

    /** The figures to be flown that changed sides with this one; none with the way to a figure. */
    public List<Integer> swappedWith(int index) {
        return index < 0 || index >= order.size() || isTransit(index)
                ? List.of()
                : toFly().stream()
                        .filter(other -> !isTransit(other))
                        .filter(other -> other != index && other < index != placeOf(other) < placeOf(index))
                        .toList();
    }

    /** Which figure this is in the order flown, from 0; what is no index, as before and after the act, stays as it is. */
    int placeOf(int index) {
        return index < 0 || index >= order.size() ? index : order.indexOf(index);
    }

    /** The first figure flown after the one with this {@code index} that is not dropped, or the way to it. */
    OptionalInt nextIndexAfter(int index) {
        return ahead(index).mapToInt(i -> i).findFirst();
    }

    /** The figures flown after the one with this {@code index} that are not dropped, without the ways to them. */
    Stream<Integer> figuresAfter(int index) {
        return ahead(index).filter(i -> !isTransit(i));
    }

    private Stream<Integer> ahead(int index) {
        return order.stream().skip(placeOf(index) + 1L).filter(i -> !isDropped(i));
    }

    List<Integer> toFly() {
        return order.stream().filter(index -> !isDropped(index)).toList();
    }

    /**
     * A figure and before it the ways that lead to it.
     *
     * @param after the index of what is behind, or being flown, which no longer counts as ahead
     */
    private List<Integer> legTo(int figure, int after) {
        int to = placeOf(figure);
        int from = to;
        while (from - 1 > placeOf(after) && isTransit(order.get(from - 1))) {
            from--;
        }
        return order.subList(from, to + 1);
    }

    /**
     * Without a figure ahead, nor the ways that lead to it.
     *
     * @param after the index of what is behind, or being flown
     */
    Sequence withDropped(int figure, int after) {
        List<String> next = new ArrayList<>(droppedIds);
        legTo(figure, after).stream()
                .map(figureIds::get)
                .filter(id -> !next.contains(id))
                .forEach(next::add);
        return withDropped(next);
    }

    /** With what {@link #withDropped(int, int)} left out. */
    Sequence withUndropped(int figure, int after) {
        List<String> back = legTo(figure, after).stream().map(figureIds::get).toList();
        return withDropped(droppedIds.stream().filter(id -> !back.contains(id)).toList());
    }

    /**
     * With two figures in each other's place, each after the ways that lead to it.
     *
     * @param after the index of what is behind, or being flown
     * @param one flown before {@code other}
     */
    Sequence withSwapped(int one, int other, int after) {
        List<Integer> first = legTo(one, after);
        List<Integer> second = legTo(other, one);
        int from = order.indexOf(first.get(0));
        List<Integer> next = new ArrayList<>(order.subList(0, from));
        next.addAll(second);
        next.addAll(order.subList(from + first.size(), order.indexOf(second.get(0))));
        next.addAll(first);
        next.addAll(order.subList(next.size(), order.size()));
        return withOrder(next);
    }

    /** With a figure directly after another. */
    Sequence withMoved(int index, int after) {
        List<Integer> next = new ArrayList<>(order);
        next.remove(Integer.valueOf(index));
        next.add(next.indexOf(after) + 1, index);
        return withOrder(next);
    }

    private Sequence withOrder(List<Integer> next) {
        return new Sequence(figureIds, transitIds, next, droppedIds);
    }

    Sequence withDropped(List<String> next) {
        return new Sequence(figureIds, transitIds, order, next);
    }

    /** True if this is only the way to the next figure. */
    public boolean isTransit(int index) {
        return transitIds.contains(figureIds.get(index));
    }

    private boolean isDropped(int index) {
        return droppedIds.contains(figureIds.get(index));
    }
}
