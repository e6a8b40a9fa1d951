package crowdline.live;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Where the aircraft is in its act, and how it got there.
 *
 * @param actId the act chosen, or null
 * @param variant the variant flown, or null if no act is chosen
 * @param figureIds the variant's figures in its own order, which an index counts
 * @param order the indices of all of them in the order they are to be flown, which differs once two were swapped
 * @param slotStartS when the act's slot begins on the session's scale, negative if before the session, or null if unknown
 * @param actStartedAtS when the act began, or null if it has not
 * @param phase where it is
 * @param source what moves the position
 * @param droppedIds figures left out on purpose, in the order they were dropped
 * @param flown what was flown in this act so far, the current figure last
 * @param flownActs acts that are over, oldest first
 */
public record Course(
        @Nullable String actId,
        @Nullable String variant,
        List<String> figureIds,
        List<Integer> order,
        @Nullable Double slotStartS,
        @Nullable Double actStartedAtS,
        Phase phase,
        Source source,
        List<String> droppedIds,
        List<Flown> flown,
        List<FlownAct> flownActs) {

    static final Course NONE = new Course(
            null,
            null,
            List.of(),
            List.of(),
            null,
            null,
            new Phase.Waiting(),
            Source.HAND,
            List.of(),
            List.of(),
            List.of());

    public Course {
        figureIds = List.copyOf(figureIds);
        order = List.copyOf(order);
        if (!new HashSet<>(order).equals(new HashSet<>(asPlanned(figureIds))) || order.size() != figureIds.size()) {
            throw new IllegalArgumentException(
                    "order is " + order + "; it must name each of " + figureIds.size() + " figures once");
        }
        droppedIds = List.copyOf(droppedIds);
        flown = List.copyOf(flown);
        flownActs = List.copyOf(flownActs);
    }

    /** The order a variant is flown in until somebody says otherwise. */
    static List<Integer> asPlanned(List<String> figureIds) {
        return IntStream.range(0, figureIds.size()).boxed().toList();
    }

    /** The index of the current figure, of the last one when off the plan, −1 before the act, the count after it. */
    public int position() {
        if (phase instanceof Phase.Flying flying) {
            return flying.index();
        }
        if (phase instanceof Phase.Held held) {
            return held.index();
        }
        if (phase instanceof Phase.OffPlan off) {
            return off.lastIndex();
        }
        return phase instanceof Phase.Waiting ? -1 : figureIds.size();
    }

    /** The figure being flown, held or not; null if there is none. */
    public @Nullable String figureId() {
        return phase instanceof Phase.Flying || phase instanceof Phase.Held ? figureIds.get(position()) : null;
    }

    /** The next figure that is not dropped. */
    public OptionalInt nextIndex() {
        return nextIndexAfter(position());
    }

    /** The first figure flown after the one with this {@code index} that is not dropped. */
    public OptionalInt nextIndexAfter(int index) {
        for (int place = placeOf(index) + 1; place < order.size(); place++) {
            if (!isDropped(order.get(place))) {
                return OptionalInt.of(order.get(place));
            }
        }
        return OptionalInt.empty();
    }

    /** Which figure this is in the order flown, from 0; −1 before the act and the count after it, as the index is. */
    public int placeOf(int index) {
        return index < 0 || index >= order.size() ? index : order.indexOf(index);
    }

    /** True if the figure is flown in another place than the variant has it, because two were swapped. */
    public boolean isSwapped(int index) {
        return placeOf(index) != index;
    }

    /** The ids of all figures in the order they are to be flown. */
    public List<String> idsAsFlown() {
        return order.stream().map(figureIds::get).toList();
    }

    boolean isDropped(int index) {
        return droppedIds.contains(figureIds.get(index));
    }

    /** When the act was over that was the last of the same id before this run; minus infinity if this is the first. */
    double earlierRunEndS() {
        boolean overNow = phase instanceof Phase.ActDone || phase instanceof Phase.ShowDone;
        List<FlownAct> before =
                overNow && !flownActs.isEmpty() ? flownActs.subList(0, flownActs.size() - 1) : flownActs;
        return before.stream()
                .filter(act -> act.actId().equals(actId))
                .mapToDouble(FlownAct::endedAtS)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** True from the start of the act to its end. */
    public boolean inTheAir() {
        return phase instanceof Phase.Flying || phase instanceof Phase.Held || phase instanceof Phase.OffPlan;
    }

    Course withPhase(Phase next) {
        return new Course(
                actId,
                variant,
                figureIds,
                order,
                slotStartS,
                actStartedAtS,
                next,
                source,
                droppedIds,
                flown,
                flownActs);
    }

    Course withSource(Source next) {
        return new Course(
                actId, variant, figureIds, order, slotStartS, actStartedAtS, phase, next, droppedIds, flown, flownActs);
    }

    Course withSlot(@Nullable Double nextS) {
        return new Course(
                actId, variant, figureIds, order, nextS, actStartedAtS, phase, source, droppedIds, flown, flownActs);
    }

    /** In another variant, whose own order holds again. */
    Course withVariant(String next, List<String> ids) {
        return new Course(
                actId,
                next,
                ids,
                asPlanned(ids),
                slotStartS,
                actStartedAtS,
                phase,
                source,
                droppedIds,
                flown,
                flownActs);
    }

    /** With two figures in each other's place. */
    Course withSwapped(int one, int other) {
        List<Integer> next = new ArrayList<>(order);
        Collections.swap(next, placeOf(one), placeOf(other));
        return new Course(
                actId,
                variant,
                figureIds,
                next,
                slotStartS,
                actStartedAtS,
                phase,
                source,
                droppedIds,
                flown,
                flownActs);
    }

    Course withDropped(List<String> next) {
        return new Course(
                actId, variant, figureIds, order, slotStartS, actStartedAtS, phase, source, next, flown, flownActs);
    }

    Course withFlown(List<Flown> next) {
        return new Course(
                actId,
                variant,
                figureIds,
                order,
                slotStartS,
                actStartedAtS,
                phase,
                source,
                droppedIds,
                next,
                flownActs);
    }

    Course withActStart(@Nullable Double atS) {
        return new Course(
                actId, variant, figureIds, order, slotStartS, atS, phase, source, droppedIds, flown, flownActs);
    }

    Course withFlownActs(List<FlownAct> next) {
        return new Course(
                actId, variant, figureIds, order, slotStartS, actStartedAtS, phase, source, droppedIds, flown, next);
    }

    /** The last flown figure with another in its place, or none. */
    Course withLastFlown(@Nullable Flown last) {
        List<Flown> next = new ArrayList<>(flown.subList(0, flown.size() - 1));
        if (last != null) {
            next.add(last);
        }
        return withFlown(next);
    }

    Course plusFlown(Flown more) {
        List<Flown> next = new ArrayList<>(flown);
        next.add(more);
        return withFlown(next);
    }
}
