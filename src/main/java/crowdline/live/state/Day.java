package crowdline.live.state;

import crowdline.live.event.ShowEvent;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What became of the running order on the day.
 *
 * @param order ids of all acts in the order they are to be flown, cancelled ones in their place
 * @param isReordered whether the order is the day's own, and no longer that of the show file
 * @param laterS how much later than planned the slot of an act begins, seconds; acts at their time are not in it
 * @param cancelled ids of acts that will not be flown
 * @param added acts that nobody had planned, in the order they were put in
 */
public record Day(
        List<String> order,
        boolean isReordered,
        Map<String, Double> laterS,
        Set<String> cancelled,
        List<AddedAct> added) {

    /**
     * An act that nobody had planned.
     *
     * @param minutes how long it takes
     * @param slotAfterId the act it was put in after, whose slot tells its own; empty if it came first
     */
    public record AddedAct(String id, String title, double minutes, String slotAfterId) {}

    static final Day NONE = new Day(List.of(), false, Map.of(), Set.of(), List.of());

    public Day {
        order = List.copyOf(order);
        laterS = Map.copyOf(laterS);
        cancelled = Set.copyOf(cancelled);
        added = List.copyOf(added);
    }

    /** How much later than planned the slot of an act begins, seconds. */
    public double laterS(String actId) {
        return laterS.getOrDefault(actId, 0.0);
    }

    /** When the slot of an act begins on the day that was planned for then. */
    public LocalDateTime slot(String actId, LocalDateTime planned) {
        return planned.plusNanos(Math.round(laterS(actId) * 1e9));
    }

    public boolean isCancelled(String actId) {
        return cancelled.contains(actId);
    }

    /** An act and all that come after it; none if it is not in the order. */
    public List<String> from(String actId) {
        int at = order.indexOf(actId);
        return at < 0 ? List.of() : order.subList(at, order.size());
    }

    /** With the acts a show file has now: what the day made of them stays. */
    Day opened(List<String> fileIds) {
        List<String> next = new ArrayList<>(fileIds);
        if (isReordered) {
            next = new ArrayList<>(order);
            Set<String> known = new HashSet<>(fileIds);
            added.forEach(act -> known.add(act.id()));
            next.retainAll(known);
            for (int i = 0; i < fileIds.size(); i++) {
                if (!next.contains(fileIds.get(i))) {
                    next.add(i == 0 ? 0 : next.indexOf(fileIds.get(i - 1)) + 1, fileIds.get(i));
                }
            }
        } else {
            for (AddedAct act : added) {
                next.add(next.indexOf(act.slotAfterId()) + 1, act.id());
            }
        }
        return new Day(next, isReordered, laterS, cancelled, added);
    }

    Day moved(List<String> actIds, double byS) {
        Map<String, Double> next = new HashMap<>(laterS);
        actIds.forEach(id -> next.merge(id, byS, Double::sum));
        next.values().removeIf(later -> later == 0);
        return new Day(order, isReordered, next, cancelled, added);
    }

    Day swapped(ShowEvent.ActsSwapped event) {
        List<String> next = new ArrayList<>(order);
        Collections.swap(next, order.indexOf(event.firstId()), order.indexOf(event.secondId()));
        return new Day(next, true, laterS, cancelled, added)
                .moved(List.of(event.firstId()), event.firstByS())
                .moved(List.of(event.secondId()), event.secondByS());
    }

    Day withCancelled(String actId, boolean isCancelled) {
        Set<String> next = new HashSet<>(cancelled);
        if (isCancelled) {
            next.add(actId);
        } else {
            next.remove(actId);
        }
        return new Day(order, isReordered, laterS, next, added);
    }

    Day plus(ShowEvent.ActAdded event) {
        String after = event.afterId() == null ? "" : event.afterId();
        List<String> next = new ArrayList<>(order);
        next.add(order.indexOf(after) + 1, event.actId());
        List<AddedAct> acts = new ArrayList<>(added);
        acts.add(new AddedAct(event.actId(), event.title(), event.minutes(), after));
        Map<String, Double> later = new HashMap<>(laterS);
        if (laterS.containsKey(after)) {
            later.put(event.actId(), laterS(after));
        }
        return new Day(next, isReordered, later, cancelled, acts);
    }
}
