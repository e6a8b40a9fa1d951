package crowdline.patter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The best sequence of remarks whose order is given, and the order that a plan gives. */
final class InOrder {
    private InOrder() {}

    /** The best that can be said of items in a given order, leaving out what does not fit. */
    static Sequence bestOf(Workload work, List<Item> order) {
        record Label(
                int free,
                long value,
                @Nullable Label before,
                @Nullable Step step) {}
        List<Label> front = new ArrayList<>();
        front.add(new Label(work.horizon().freeFrom(), 0, null, null));
        for (Item item : order) {
            List<Label> next = new ArrayList<>(front);
            for (Label label : front) {
                for (Choice choice : item.choices()) {
                    int start = choice.starts().earliest(label.free());
                    if (start != Tick.NEVER) {
                        int free = start + choice.length() + work.breath();
                        next.add(new Label(free, label.value() + choice.value(), label, new Step(item, choice)));
                    }
                }
            }
            next.sort(Comparator.comparingInt(Label::free)
                    .thenComparing(Comparator.comparingLong(Label::value).reversed()));
            front.clear();
            long best = -1;
            for (Label label : next) {
                if (label.value() > best) {
                    best = label.value();
                    front.add(label);
                }
            }
        }
        List<Step> steps = new ArrayList<>();
        Label at = front.get(front.size() - 1);
        while (at != null && at.step() != null) {
            steps.add(at.step());
            at = at.before();
        }
        Collections.reverse(steps);
        return new Sequence(work, steps);
    }

    /** The order of a plan made before, as far as its remarks are still to be said and still in the order of figures. */
    static List<Item> orderOf(Plan plan, Workload work) {
        var byId = work.byId();
        List<Item> order = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        int last = -1;
        for (Placed placed : plan.placed()) {
            Item item = byId.get(placed.remarkId());
            if (item != null && (item.floats() || item.order() > last) && taken.add(item.id())) {
                order.add(item);
                last = item.floats() ? last : item.order();
            }
        }
        return order;
    }
}
