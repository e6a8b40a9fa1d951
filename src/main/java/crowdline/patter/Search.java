package crowdline.patter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Looks for a sequence worth more than one already known, or shows that there is none.
 *
 * <p>Label setting in the order of time: a label is a way to fill the time up to a moment, with the floating remarks used.
 * It is dropped if another label is no later and worth at least as much even after giving back all that it used and the
 * first did not (whatever follows the first can follow the other too), or if its value and the {@link Relaxation}'s
 * bound on what follows do not exceed what is known. Where more labels are left than the effort allows, the most
 * promising go on and the result is no longer certain to be best.
 */
final class Search {
    /** How many floating remarks one label can tell apart. */
    static final int MOST_FLOATING = 64;

    /**
     * Extensions of labels per search, about, for a small workload; tuned so that most such are decided. Half takes three fifths of the
     * time and shows an eighth fewer plans to be the best, double takes half as much again and shows a seventh more.
     */
    private static final int EFFORT_SMALL = 60_000;

    /** The same for a large one; tuned to plan 40 figures and 120 remarks in under 5 ms. Half and double decide nothing. */
    private static final int EFFORT_LARGE = 16_000;

    /** Stages times choices up to which a workload is small. */
    private static final int SMALL = 500;

    /** Fewest labels that go on at each stage however many choices there are. */
    private static final int FEWEST_LABELS = 3;

    /** With how many of the latest labels a new one is compared; fewer only means less is thrown away. Tuned; 100 to 400 do. */
    private static final int MOST_COMPARED = 200;

    /** A sequence and whether it is certain that none is worth more. */
    record Result(Sequence sequence, boolean provenBest) {}

    private record Label(
            int free,
            long value,
            long used,
            long prices,
            long bound,
            @Nullable Label before,
            @Nullable Step step) {

        /** The earlier first, and of two as early the one worth more. */
        static int inTime(Label one, Label other) {
            return one.free != other.free
                    ? Integer.compare(one.free, other.free)
                    : Long.compare(other.value, one.value);
        }

        static int mostPromising(Label one, Label other) {
            return Long.compare(other.bound, one.bound);
        }
    }

    private final Workload work;
    private final List<Item> floating;
    private final Item[] items;
    private final Choice[][] choices;
    private final Worths worths;
    private final long grain;
    private final int mostLabels;
    private final Relaxation relaxation;
    private long[] prices;
    private Sequence best;
    private long bestValue;
    private boolean complete = true;

    private Search(Workload work, Sequence known) {
        this.work = work;
        best = known;
        bestValue = known.value();
        floating = work.floating()
                .subList(0, Math.min(MOST_FLOATING, work.floating().size()));
        items = floating.toArray(Item[]::new);
        choices = floating.stream()
                .map(item -> item.choices().toArray(Choice[]::new))
                .toArray(Choice[][]::new);
        worths = new Worths(floating);
        grain = grain(work);
        int ways = 3 + floating.stream().mapToInt(i -> i.choices().size()).sum();
        int size = ways * (work.bound().size() + 1);
        mostLabels = Math.max(FEWEST_LABELS, (size <= SMALL ? EFFORT_SMALL : EFFORT_LARGE) / size);
        Relaxation fine = new Relaxation(work, floating, 1);
        int coarse = (int) Math.min(Math.max(1, work.breath()), 1 + fine.cells() / 1000);
        relaxation = coarse == 1 ? fine : new Relaxation(work, floating, coarse);
        prices = new long[floating.size()];
    }

    static Result improve(Workload work, Sequence known) {
        if (known.value() == work.greatestValue()) {
            return new Result(known, true);
        }
        Search search = new Search(work, known);
        Prices trial = new Prices(work, search.floating, search.relaxation);
        boolean decided = trial.suffice(search.bestValue + search.grain);
        if (!decided) {
            search.prices = trial.found();
            decided = search.run();
        }
        boolean all = search.floating.size() == work.floating().size();
        return new Result(search.best, decided && all);
    }

    /** Greatest common divisor of all values: what is better is better by at least this. */
    private static long grain(Workload work) {
        long grain = 0;
        for (List<Item> items : List.of(work.bound(), work.floating())) {
            for (Item item : items) {
                for (Choice choice : item.choices()) {
                    grain = gcd(grain, choice.value());
                }
            }
        }
        return Math.max(1, grain);
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** True if the search looked at everything that could be better. */
    private boolean run() {
        List<Label> labels = new ArrayList<>();
        long given = Arrays.stream(prices).sum();
        int start = work.horizon().freeFrom();
        labels.add(new Label(start, 0, 0, given, given + relaxation.ahead(0, start), null, null));
        for (int stage = 0; stage <= work.bound().size(); stage++) {
            labels = throughStage(stage, labels);
        }
        return complete;
    }

    private List<Label> throughStage(int stage, List<Label> arriving) {
        if (arriving.size() > mostLabels) {
            arriving.sort(Label::mostPromising);
            arriving = arriving.subList(0, mostLabels);
            complete = false;
        }
        PriorityQueue<Label> queue = new PriorityQueue<>(Label::inTime);
        queue.addAll(arriving);
        List<Label> settled = new ArrayList<>();
        List<Label> leaving = new ArrayList<>();
        int mostHere = 2 * mostLabels;
        while (!queue.isEmpty()) {
            Label label = queue.remove();
            if (label.bound() < bestValue + grain || isDominated(label, settled)) {
                continue;
            }
            if (settled.size() >= mostHere) {
                complete = false;
                break;
            }
            settled.add(label);
            if (label.value() > bestValue) {
                take(label);
            }
            if (label.free() >= relaxation.from(stage) && label.free() <= relaxation.to(stage)) {
                addFloating(stage, label, queue);
            }
            if (stage < work.bound().size()) {
                addBound(stage, label, leaving);
            }
        }
        return leaving;
    }

    private void addFloating(int stage, Label label, PriorityQueue<Label> queue) {
        for (int i = 0; i < items.length; i++) {
            long bit = 1L << i;
            if ((label.used() & bit) != 0) {
                continue;
            }
            for (Choice choice : choices[i]) {
                Label next = after(label, stage, items[i], choice, bit);
                if (next != null) {
                    queue.add(next);
                }
            }
        }
    }

    private void addBound(int stage, Label label, List<Label> leaving) {
        Item item = work.bound().get(stage);
        for (Choice choice : item.choices()) {
            Label next = after(label, stage + 1, item, choice, 0);
            if (next != null) {
                leaving.add(next);
            }
        }
        long bound = label.value() + label.prices() + relaxation.ahead(stage + 1, label.free());
        if (bound >= bestValue + grain) {
            leaving.add(new Label(
                    label.free(), label.value(), label.used(), label.prices(), bound, label.before(), label.step()));
        }
    }

    /** The label after one more remark, or null if that does not fit or cannot lead to anything better. */
    private @Nullable Label after(Label label, int stage, Item item, Choice choice, long bit) {
        int start = choice.starts().earliest(label.free());
        if (start == Tick.NEVER) {
            return null;
        }
        int free = start + choice.length() + work.breath();
        long value = label.value() + choice.value();
        long left = bit == 0 ? label.prices() : label.prices() - prices[item.bit()];
        long bound = value + left + relaxation.ahead(stage, free);
        return bound < bestValue + grain
                ? null
                : new Label(free, value, label.used() | bit, left, bound, label, new Step(item, choice));
    }

    private boolean isDominated(Label label, List<Label> settled) {
        int oldest = Math.max(0, settled.size() - MOST_COMPARED);
        for (int i = settled.size() - 1; i >= oldest; i--) {
            Label other = settled.get(i);
            long lead = other.value() - label.value();
            if (lead < 0) {
                continue;
            }
            if (lead >= worths.of(other.used() & ~label.used())) {
                return true;
            }
        }
        return false;
    }

    private void take(Label label) {
        List<Step> steps = new ArrayList<>();
        for (Label at = label; at != null && at.step() != null; at = at.before()) {
            steps.add(at.step());
        }
        Collections.reverse(steps);
        Sequence found = new Sequence(work, steps);
        best = found;
        bestValue = found.value();
    }
}
