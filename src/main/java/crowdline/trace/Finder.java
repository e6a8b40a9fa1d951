package crowdline.trace;

import crowdline.trace.Found.Guess;
import crowdline.trace.Found.What;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the figures of a path: of all ways to cut it, the one whose parts together are the likeliest.
 *
 * <p>All costs are differences of {@link Shape} times seconds, as an aircraft would take them whose figures take as long as
 * those of a light one.
 */
final class Finder {
    /** Seconds. */
    private static final double SHORTEST_S = 2;
    /** Seconds, for such an aircraft. */
    private static final double LONGEST_S = 45;
    /** Seconds, for such an aircraft: within a figure no line is longer. */
    private static final double LONGEST_LINE_S = 5;
    /** Seconds, for such an aircraft: a longer way is two. */
    private static final double LONGEST_WAY_S = 60;
    /** Difference by which a guess is a third as likely. Tuned, with the next, so that what is said to be so sure is right so often. */
    private static final double DOUBT = 0.008;
    /** How soon it is none of them where the nearest is far, of each difference of 1. */
    private static final double NONE = 2;

    private static final int MOST_GUESSES = 3;

    private final KnownShapes known;
    private final double scale;

    Finder(KnownShapes known) {
        this.known = known;
        scale = known.scale;
    }

    /** The cheapest way to a cut: from which, and what lies between, null for a line or a way. */
    private record Way(double cost, int from, @Nullable What what) {}

    List<Found> find(Path path) {
        int[] cuts = Cuts.of(path);
        Way[] best = cheapest(path, cuts);
        List<Found> parts = new ArrayList<>();
        for (int j = best.length - 1; j > 0; j = best[j].from) {
            What what = best[j].what;
            if (what != null) {
                int from = cuts[best[j].from];
                List<Guess> guesses = what == What.FIGURE ? guesses(path, from, cuts[j]) : List.of();
                parts.add(new Found(what, path.tS(from), path.tS(cuts[j]), guesses));
            }
        }
        Collections.reverse(parts);
        List<Found> found = new ArrayList<>();
        int at = 0;
        for (Found part : parts) {
            found.addAll(Between.in(path, at, path.at(part.startS())));
            found.add(part);
            at = path.at(part.endS());
        }
        found.addAll(Between.in(path, at, path.size - 1));
        return found;
    }

    /** The cheapest way to every cut, of all there are. */
    private Way[] cheapest(Path path, int[] cuts) {
        Plain plain = new Plain(path, scale);
        Way[] best = new Way[cuts.length];
        best[0] = new Way(0, -1, null);
        for (int j = 1; j < best.length; j++) {
            Way cheapest = new Way(Double.POSITIVE_INFINITY, 0, null);
            for (int i = j - 1; i >= 0; i--) {
                if (i < j - 1 && (cuts[j] - cuts[i]) * Path.STEP_S * scale > LONGEST_WAY_S) {
                    break;
                }
                Way way = between(path, plain, cuts, i, j);
                if (best[i].cost + way.cost < cheapest.cost) {
                    cheapest = new Way(best[i].cost + way.cost, i, way.what);
                }
            }
            best[j] = cheapest;
        }
        return best;
    }

    private Way between(Path path, Plain plain, int[] cuts, int i, int j) {
        int from = cuts[i];
        int to = cuts[j];
        Plain.Cost none = plain.of(from, to);
        double seconds = (to - from) * Path.STEP_S;
        if (seconds >= SHORTEST_S
                && seconds * scale <= LONGEST_S
                && none.cost() > KnownShapes.FIGURE
                && !plain.hasLine(from, to, LONGEST_LINE_S / scale)) {
            double bound = (none.cost() - KnownShapes.FIGURE) / (scale * seconds);
            double least = least(new Shape(path, from, to), seconds, bound);
            if (least < bound) {
                return new Way(known.cost(least, seconds), i, What.FIGURE);
            }
        }
        return new Way(none.cost(), i, none.what());
    }

    /** How far the nearest figure is, or anything beyond a bound. */
    private double least(Shape shape, double seconds, double bound) {
        double least = bound;
        for (KnownShapes.Known one : known.all) {
            double more = one.price(seconds);
            if (more < least) {
                least = Math.min(least, shape.distance(one.shape(), least - more) + more);
            }
        }
        return least;
    }

    /** The likeliest figures for a piece, and how likely each is. */
    private List<Guess> guesses(Path path, int from, int to) {
        double seconds = (to - from) * Path.STEP_S;
        Shape shape = new Shape(path, from, to);
        List<KnownShapes.Near> near = known.near(shape, seconds);
        double first = near.get(0).difference();
        double all = near.stream()
                .mapToDouble(n -> Math.exp((first - n.difference()) / DOUBT))
                .sum();
        List<Guess> guesses = new ArrayList<>();
        for (KnownShapes.Near n : near) {
            double share = Math.exp((first - n.difference()) / DOUBT) / all * Math.exp(-NONE * first);
            String name = known.plainest(n.known().entry().name());
            if (guesses.stream().noneMatch(other -> other.name().equals(name)) && guesses.size() < MOST_GUESSES) {
                guesses.add(new Guess(name, share));
            }
        }
        return guesses;
    }
}
