package crowdline.trace;

import crowdline.trace.Found.What;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What looks like a figure and leads but from one to the next. */
final class Leads {
    /** For speed every pilot dives, and hardly anybody to be seen. Common practice, no source. */
    private static final Set<String> NAMES = Set.of("dive", "push-over");
    /**
     * By how much less a figure as flat as a way costs than the way, at least: ways too turn to both sides, and climb. With less,
     * one of twenty was one. Tuned.
     */
    private static final double FLAT = 0.7;
    /** The same where it is straight before and after: whoever wants it seen flies it so. Tuned. */
    private static final double SHOWN = 0.4;

    private final Path path;
    private final KnownShapes known;
    private final Plain plain;

    Leads(Path path, KnownShapes known) {
        this.path = path;
        this.known = known;
        plain = new Plain(path, known.scale);
    }

    /** The same, with ways for what is one. */
    List<Found> in(List<Found> all) {
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Found one = all.get(i);
            boolean shown = isLine(all, i - 1) && isLine(all, i + 1);
            found.add(
                    one.what() == What.FIGURE && leads(one, shown ? SHOWN : FLAT)
                            ? new Found(What.WAY, one.startS(), one.endS(), List.of())
                            : one);
        }
        return found;
    }

    private static boolean isLine(List<Found> all, int i) {
        return i >= 0 && i < all.size() && all.get(i).what() == What.LINE;
    }

    private boolean leads(Found one, double atLeast) {
        int from = path.at(one.startS());
        int to = path.at(one.endS());
        KnownShapes.Near nearest =
                known.near(new Shape(path, from, to), one.seconds()).get(0);
        double figure = known.cost(nearest.difference(), one.seconds());
        return NAMES.contains(nearest.known().entry().name())
                || (nearest.known().flat() && plain.of(from, to).cost() - figure < atLeast);
    }
}
