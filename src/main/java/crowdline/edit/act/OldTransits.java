package crowdline.edit.act;

import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The transits of an act before it was laid out again: a new one on the same way takes over what was said in the old. */
final class OldTransits {
    private static final String END = "";

    private final Act before;
    private final Map<String, List<Figure>> ways = new HashMap<>();
    private final Set<String> taken = new HashSet<>();

    OldTransits(Act before) {
        this.before = before;
        for (Variant variant : before.variants()) {
            List<Figure> way = new ArrayList<>();
            for (Figure figure : before.inOrder(variant)) {
                if (figure.transit()) {
                    way.add(figure);
                } else {
                    ways.put(key(variant.name(), figure.id()), way);
                    way = new ArrayList<>();
                }
            }
            ways.put(key(variant.name(), END), way);
        }
    }

    private static String key(String variant, String to) {
        return variant + '\n' + to;
    }

    /**
     * The old one that stood where the new one stands.
     *
     * @param to id of the figure it leads to, or null at the end
     * @param fromLast how many transits come between it and that figure
     */
    @Nullable
    Figure on(String variant, @Nullable String to, int fromLast) {
        List<Figure> way = ways.getOrDefault(key(variant, to == null ? END : to), List.of());
        int i = way.size() - 1 - fromLast;
        if (i < 0 || !taken.add(way.get(i).id())) {
            return null;
        }
        return way.get(i);
    }

    /** What was said in those whose way is gone, without the times it had there; none of it is lost. */
    List<Remark> leftOver() {
        List<Remark> left = new ArrayList<>();
        for (Figure figure : before.figures()) {
            if (figure.transit() && !taken.contains(figure.id())) {
                figure.remarks().stream()
                        .filter(r -> !r.draft())
                        .map(OldTransits::timeless)
                        .forEach(left::add);
            }
        }
        return left;
    }

    private static Remark timeless(Remark r) {
        return new Remark(r.id(), r.kind(), r.text(), r.shortText(), null, null, r.weight(), r.once())
                .asked(r.duty())
                .saidBy(r.speaker())
                .translated(r.translation());
    }
}
