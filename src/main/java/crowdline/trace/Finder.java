package crowdline.trace;

import crowdline.trace.Found.Guess;
import crowdline.trace.Found.What;
import crowdline.trace.KnownShapes.Known;
import crowdline.trace.KnownShapes.Near;
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
                parts.add(part(path, cuts[best[j].from], cuts[j], what));
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

    /** What leads from one figure to the next is a way, and takes part all the same in where they are cut. */
    private Found part(Path path, int from, int to, What what) {
        List<Guess> guesses = what == What.FIGURE ? guesses(path, from, to) : List.of();
        boolean leads =
                !guesses.isEmpty() && KnownShapes.LEADS.contains(guesses.get(0).name());
        return new Found(leads ? What.WAY : what, path.tS(from), path.tS(to), leads ? List.of() : guesses);
    }

    /** The cheapest way to every cut, of all there are. */
    private Way[] cheapest(Path path, int[] cuts) {
        Plain plain = new Plain(path, scale);
        Flats flats = new Flats(path);
        Way[] best = new Way[cuts.length];
        best[0] = new Way(0, -1, null);
        for (int j = 1; j < best.length; j++) {
            Way cheapest = new Way(Double.POSITIVE_INFINITY, 0, null);
            for (int i = j - 1; i >= 0; i--) {
                if (i < j - 1 && (cuts[j] - cuts[i]) * Path.STEP_S * scale > LONGEST_WAY_S) {
                    break;
                }
                Way way = between(path, plain, flats, cuts, i, j);
                if (best[i].cost + way.cost < cheapest.cost) {
                    cheapest = new Way(best[i].cost + way.cost, i, way.what);
                }
            }
            best[j] = cheapest;
        }
        return best;
    }

    private Way between(Path path, Plain plain, Flats flats, int[] cuts, int i, int j) {
        int from = cuts[i];
        int to = cuts[j];
        Plain.Cost none = plain.of(from, to);
        Way way = new Way(none.cost(), i, none.what());
        double seconds = (to - from) * Path.STEP_S;
        if (seconds < SHORTEST_S
                || seconds * scale > LONGEST_S
                || none.cost() <= KnownShapes.FIGURE
                || plain.hasLine(from, to, LONGEST_LINE_S / scale)) {
            return way;
        }
        Shape shape = new Shape(path, from, to);
        double least = (none.cost() - KnownShapes.FIGURE) / (scale * seconds);
        Near other = nearest(known.others, shape, seconds, least);
        if (other != null) {
            way = new Way(known.cost(other.difference(), seconds), i, What.FIGURE);
            least = other.difference();
        }
        // As part of a longer way it would cost but that, so a flat figure costs so much less, and no more for being
        // cut longer.
        Near flat = Flats.canBe(shape) ? nearest(known.flat, shape, seconds, least + Plain.WAY_PER_S) : null;
        if (flat != null) {
            double cost = known.cost(flat.difference(), seconds);
            double shown = cost - plain.asWay(from, to, flat.known().seconds());
            if (shown < way.cost && flats.isShown(from, to, flat, none.cost() - cost)) {
                return new Way(shown, i, What.FIGURE);
            }
        }
        return way;
    }

    /** The nearest of some, null if none is nearer than a bound. */
    private static @Nullable Near nearest(List<Known> some, Shape shape, double seconds, double bound) {
        double least = bound;
        Known nearest = null;
        for (Known one : some) {
            double more = one.price(seconds);
            if (more < least) {
                double difference = shape.distance(one.shape(), least - more) + more;
                if (difference < least) {
                    least = difference;
                    nearest = one;
                }
            }
        }
        return nearest == null ? null : new Near(least, nearest);
    }

    /** The likeliest figures for a piece, and how likely each is. */
    private List<Guess> guesses(Path path, int from, int to) {
        double seconds = (to - from) * Path.STEP_S;
        Shape shape = new Shape(path, from, to);
        List<Near> near = known.near(shape, seconds);
        double first = near.get(0).difference();
        double all = near.stream()
                .mapToDouble(n -> Math.exp((first - n.difference()) / DOUBT))
                .sum();
        List<Guess> guesses = new ArrayList<>();
        for (Near n : near) {
            double share = Math.exp((first - n.difference()) / DOUBT) / all * Math.exp(-NONE * first);
            String name = known.plainest(n.known().entry().name());
            if (guesses.stream().noneMatch(other -> other.name().equals(name)) && guesses.size() < MOST_GUESSES) {
                guesses.add(new Guess(name, share));
            }
        }
        return guesses;
    }
}
