package crowdline.trace;

import crowdline.trace.Found.Guess;
import crowdline.trace.Found.What;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the figures of a path: of all ways to cut it, the one whose parts are nearest to figures that are known.
 *
 * <p>All costs are differences of {@link Shape} times seconds.
 */
final class Finder {
    /** A figure more. Less cuts figures in two, more makes one of two. */
    private static final double FIGURE = 1.0;
    /** What no figure fits, a second. */
    private static final double UNKNOWN_PER_S = 0.35;
    /** A level turn, a second. */
    private static final double WAY_PER_S = 0.05;

    /** Seconds. */
    private static final double SHORTEST_S = 2;

    private static final double LONGEST_S = 60;
    /** Seconds: within a figure no line is longer. */
    private static final double LONGEST_LINE_S = 6;
    /** Cuts from the beginning of a figure to its end, at most. */
    private static final int MOST_CUTS = 9;
    /** Degrees. */
    private static final double LEVEL_DEG = 15;
    /** Degrees: whoever turns further flies a full turn to show it. */
    private static final double WAY_TURNS_DEG = 280;
    /** Degrees: what turns less is a line, flown a little crooked. */
    private static final double LINE_TURNS_DEG = 40;
    /** Seconds: a shorter line is not worth a remark. */
    private static final double LINE_S = 2.5;
    /** Difference by which a guess is a third as likely. */
    private static final double DOUBT = 0.03;

    /** Difference of a figure that takes e times as long as it usually does; goes with the square. Tuned. */
    private static final double TEMPO = 0.05;

    private static final int MOST_GUESSES = 3;

    private final KnownShapes known;

    Finder(KnownShapes known) {
        this.known = known;
    }

    /** A place where the path may be cut. */
    private record Cut(int at, int stretch) {}

    /** The cheapest way to a cut. */
    private record Way(double cost, int from, @Nullable Found found) {}

    List<Found> find(Path path) {
        List<int[]> stretches = Stretches.of(path);
        if (stretches.isEmpty()) {
            return List.of();
        }
        List<Cut> cuts = cuts(path, stretches);
        Way[] best = new Way[cuts.size()];
        best[0] = new Way(0, -1, null);
        for (int j = 1; j < best.length; j++) {
            Way cheapest = new Way(Double.POSITIVE_INFINITY, 0, null);
            for (int i = Math.max(0, j - MOST_CUTS); i < j; i++) {
                Way way = between(path, cuts, stretches, i, j);
                if (way != null && best[i].cost + way.cost < cheapest.cost) {
                    cheapest = new Way(best[i].cost + way.cost, i, way.found);
                }
            }
            best[j] = cheapest;
        }
        List<Found> found = new ArrayList<>();
        line(found, path, 0, cuts.get(0).at);
        line(found, path, cuts.get(cuts.size() - 1).at, path.size - 1);
        for (int j = best.length - 1; j > 0; j = best[j].from) {
            Found one = best[j].found;
            if (one == null) {
                line(found, path, cuts.get(best[j].from).at, cuts.get(j).at);
            } else {
                found.add(one);
            }
        }
        found.sort(Comparator.comparingDouble(Found::startS));
        return joined(found);
    }

    /** Lines with no more than a moment between them are one, flown a little crooked. */
    private static List<Found> joined(List<Found> found) {
        List<Found> joined = new ArrayList<>();
        for (Found one : found) {
            Found last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null
                    && last.what() == What.LINE
                    && one.what() == What.LINE
                    && one.startS() - last.endS() <= SHORTEST_S) {
                joined.set(joined.size() - 1, new Found(What.LINE, last.startS(), one.endS(), List.of()));
            } else {
                joined.add(one);
            }
        }
        return joined;
    }

    private static void line(List<Found> found, Path path, int from, int to) {
        if ((to - from) * Path.STEP_S >= LINE_S) {
            found.add(new Found(What.LINE, path.tS(from), path.tS(to), List.of()));
        }
    }

    /** The ends of every stretch, and where it is level for a moment before or after it climbed or dived. */
    private static List<Cut> cuts(Path path, List<int[]> stretches) {
        List<Cut> cuts = new ArrayList<>();
        for (int s = 0; s < stretches.size(); s++) {
            int from = stretches.get(s)[0];
            int to = stretches.get(s)[1];
            cuts.add(new Cut(from, s));
            int last = from;
            for (int i = from + 1; i < to; i++) {
                boolean crosses = path.tz[i - 1] * path.tz[i] <= 0 && Math.hypot(path.tx[i], path.ty[i]) > 0.8;
                if (crosses
                        && (i - last) * Path.STEP_S > SHORTEST_S
                        && (to - i) * Path.STEP_S > SHORTEST_S
                        && (leavesLevel(path, last, i) || leavesLevel(path, i, next(path, i, to)))) {
                    cuts.add(new Cut(i, s));
                    last = i;
                }
            }
            cuts.add(new Cut(to, s));
        }
        return cuts;
    }

    /** Where it is level again after a point, or the end. */
    private static int next(Path path, int from, int to) {
        int i = from + (int) (SHORTEST_S / Path.STEP_S);
        while (i < to && path.tz[i - 1] * path.tz[i] > 0) {
            i++;
        }
        return Math.min(i, to);
    }

    private static boolean leavesLevel(Path path, int from, int to) {
        for (int i = from; i <= to; i++) {
            if (Math.abs(path.climbDeg(i)) > LEVEL_DEG) {
                return true;
            }
        }
        return false;
    }

    private @Nullable Way between(Path path, List<Cut> cuts, List<int[]> stretches, int i, int j) {
        Cut a = cuts.get(i);
        Cut b = cuts.get(j);
        boolean next = j == i + 1;
        if (next && a.stretch != b.stretch) {
            return new Way(0, i, null);
        }
        double seconds = (b.at - a.at) * Path.STEP_S;
        for (int s = a.stretch; s < b.stretch; s++) {
            if ((stretches.get(s + 1)[0] - stretches.get(s)[1]) * Path.STEP_S > LONGEST_LINE_S) {
                return null;
            }
        }
        // Neither begins nor ends with a line.
        if (a.at == stretches.get(a.stretch)[1] || b.at == stretches.get(b.stretch)[0]) {
            return null;
        }
        Way way = null;
        if (next) {
            way = new Way(UNKNOWN_PER_S * seconds, i, new Found(What.UNKNOWN, path.tS(a.at), path.tS(b.at), List.of()));
        }
        double turned = turnedLevelDeg(path, a.at, b.at);
        if (turned < WAY_TURNS_DEG && (way == null || WAY_PER_S * seconds < way.cost)) {
            What what = turned < LINE_TURNS_DEG ? What.LINE : What.WAY;
            way = new Way(WAY_PER_S * seconds, i, new Found(what, path.tS(a.at), path.tS(b.at), List.of()));
        }
        if (seconds >= SHORTEST_S && seconds <= LONGEST_S) {
            Way figure = figure(path, a.at, b.at, seconds, i);
            way = way == null || figure.cost < way.cost ? figure : way;
        }
        return way;
    }

    /** How far it turns on the whole, degrees; infinite where it is not level. */
    private static double turnedLevelDeg(Path path, int from, int to) {
        double turned = 0;
        for (int i = from + 1; i <= to; i++) {
            if (Math.abs(path.climbDeg(i)) > LEVEL_DEG) {
                return Double.POSITIVE_INFINITY;
            }
            turned += Math.atan2(
                    path.tx[i - 1] * path.ty[i] - path.ty[i - 1] * path.tx[i],
                    path.tx[i - 1] * path.tx[i] + path.ty[i - 1] * path.ty[i]);
        }
        return Math.abs(Math.toDegrees(turned));
    }

    private Way figure(Path path, int from, int to, double seconds, int i) {
        Shape shape = new Shape(path, from, to);
        List<Guess> near = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (KnownShapes.Known one : known.all) {
            double longer = Math.log(seconds / one.seconds());
            double off = shape.distance(one.shape()) + one.extra() + TEMPO * longer * longer;
            least = Math.min(least, off);
            near.add(new Guess(one.entry().name(), off));
        }
        near.sort(Comparator.comparingDouble(Guess::sure));
        double first = least;
        double all = near.stream()
                .mapToDouble(g -> Math.exp((first - g.sure()) / DOUBT))
                .sum();
        List<Guess> guesses = new ArrayList<>();
        for (Guess g : near) {
            double share = Math.exp((first - g.sure()) / DOUBT) / all * Math.exp(-first);
            String name = known.plainest(g.name());
            if (guesses.stream().noneMatch(other -> other.name().equals(name)) && guesses.size() < MOST_GUESSES) {
                guesses.add(new Guess(name, share));
            }
        }
        return new Way(FIGURE + least * seconds, i, new Found(What.FIGURE, path.tS(from), path.tS(to), guesses));
    }
}
