package crowdline.patter;

import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Remarks in an order, each in a form, that can be said one after the other. For a given order saying each as early as
 * possible leaves most room, so two arrays tell whether a change still fits: when the next could begin at the earliest,
 * and how late a step may begin without spoiling what follows.
 */
public final class Sequence {
    private final Workload work;
    private final List<Step> steps;

    /** Moment from which step i may begin; the last entry is for what comes after all steps. */
    private final int[] free;

    /** Latest start of step i that leaves the following ones possible; the last entry is without limit. */
    private final int[] latest;

    Sequence(Workload work, List<Step> steps) {
        this.work = work;
        this.steps = List.copyOf(steps);
        free = new int[steps.size() + 1];
        latest = new int[steps.size() + 1];
        free[0] = work.horizon().freeFrom();
        for (int i = 0; i < steps.size(); i++) {
            Choice choice = steps.get(i).choice();
            int start = choice.starts().earliest(free[i]);
            if (start == Tick.NEVER) {
                throw new IllegalStateException("step " + i + " of the sequence has no start");
            }
            free[i + 1] = start + choice.length() + work.breath();
        }
        latest[steps.size()] = Tick.NEVER;
        for (int i = steps.size() - 1; i >= 0; i--) {
            Choice choice = steps.get(i).choice();
            int limit = latest[i + 1] == Tick.NEVER ? Tick.NEVER : latest[i + 1] - choice.length() - work.breath();
            latest[i] = choice.starts().latest(limit);
        }
    }

    List<Step> steps() {
        return steps;
    }

    long value() {
        return steps.stream().mapToLong(step -> step.choice().value()).sum();
    }

    int latestStart(int index) {
        return latest[index];
    }

    /** This sequence with all that still fits in, the most valuable first, each where it leaves the least time over. */
    Sequence filled() {
        Sequence best = this;
        List<Item> items = new ArrayList<>(work.bound());
        items.addAll(work.floating());
        items.sort(Comparator.comparingLong(Item::greatestValue).reversed());
        for (Item item : items) {
            int at = best.indexOf(item);
            best = at >= 0 ? best.improved(at, item) : best.inserted(item);
        }
        return best;
    }

    /**
     * This sequence with every duty that floats as early as it can be said without losing anything: an act may be cut
     * short. A duty already on the screen moves only if that leaves some time to spare.
     *
     * @param spare that time, ticks
     */
    Sequence dutiesEarly(int spare) {
        Sequence best = this;
        // One duty may make room for another, so look again while anything moves.
        for (int round = 0; round < steps.size(); round++) {
            Sequence before = best;
            for (Step step : before.steps) {
                if (step.item().floats() && isDuty(step)) {
                    best = best.earlier(best.indexOf(step.item()), step.choice().kept() ? spare : 0);
                }
            }
            if (best == before) {
                break;
            }
        }
        return best;
    }

    private Sequence earlier(int from, int spare) {
        Step duty = steps.get(from);
        Sequence others = without(from);
        int first = from;
        while (first > 0 && !(steps.get(first - 1).item().floats() && isDuty(steps.get(first - 1)))) {
            first--;
        }
        for (int at = first; at < from; at++) {
            if (others.slackAfter(at, at, duty.choice()) >= spare) {
                return others.with(at, duty);
            }
            Step there = steps.get(at);
            if (!duty.choice().kept() && there.item().floats() && !isDuty(there)) {
                Sequence less = others.without(at);
                if (less.slackAfter(at, at, duty.choice()) >= 0) {
                    Sequence swapped = less.with(at, duty).inserted(there.item());
                    if (swapped.value() >= value() && swapped.indexOf(duty.item()) < from) {
                        return swapped;
                    }
                }
            }
        }
        return this;
    }

    private static boolean isDuty(Step step) {
        return step.item().candidate().remark().kind() == RemarkKind.DUTY;
    }

    private Sequence without(int index) {
        List<Step> fewer = new ArrayList<>(steps);
        fewer.remove(index);
        return new Sequence(work, fewer);
    }

    private Sequence with(int index, Step step) {
        List<Step> more = new ArrayList<>(steps);
        more.add(index, step);
        return new Sequence(work, more);
    }

    private int indexOf(Item item) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).item().order() == item.order()
                    && steps.get(i).item().bit() == item.bit()) {
                return i;
            }
        }
        return -1;
    }

    private Sequence improved(int at, Item item) {
        Choice now = steps.get(at).choice();
        for (Choice choice : item.choices()) {
            if (choice.value() > now.value() && slackAfter(at, at + 1, choice) >= 0) {
                List<Step> changed = new ArrayList<>(steps);
                changed.set(at, new Step(item, choice));
                return new Sequence(work, changed);
            }
        }
        return this;
    }

    private Sequence inserted(Item item) {
        int from = 0;
        int to = steps.size();
        for (int i = 0; i < steps.size() && !item.floats(); i++) {
            int order = steps.get(i).item().order();
            if (order >= 0 && order < item.order()) {
                from = i + 1;
            } else if (order > item.order()) {
                to = Math.min(to, i);
            }
        }
        for (Choice choice : item.choices()) {
            int bestAt = -1;
            int bestSlack = Tick.NEVER;
            for (int at = from; at <= to; at++) {
                int slack = slackAfter(at, at, choice);
                if (slack >= 0 && (bestAt < 0 || slack < bestSlack)) {
                    bestAt = at;
                    bestSlack = slack;
                }
            }
            if (bestAt >= 0) {
                return with(bestAt, new Step(item, choice));
            }
        }
        return this;
    }

    /** How much later the step at {@code next} could begin if a choice came after the first {@code at}; below 0 if not. */
    private int slackAfter(int at, int next, Choice choice) {
        int start = choice.starts().earliest(free[at]);
        if (start == Tick.NEVER) {
            return -1;
        }
        int then = start + choice.length() + work.breath();
        if (next == steps.size()) {
            return work.horizon().end() + work.breath() - then;
        }
        int nextStart = steps.get(next).choice().starts().earliest(then);
        return nextStart == Tick.NEVER ? -1 : latest[next] - nextStart;
    }
}
