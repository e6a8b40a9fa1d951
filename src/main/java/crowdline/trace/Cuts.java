package crowdline.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Where a path may be cut: every place where a figure could begin or end. Figures begin and end about level, so these are the
 * ends of every line, the first and the last level moment between a dive and a climb, and where a level turn goes over into one
 * the other way.
 */
final class Cuts {
    /** Degrees: what is level climbs or sinks by less. */
    private static final double LEVEL_DEG = 12;
    /** Seconds: a level moment that is shorter is cut but once. */
    private static final double MOMENT_S = 1.6;
    /** Seconds: between two cuts there is no less. */
    private static final double LEAST_S = 0.8;
    /** Sine of the climb before a top, and of the dive after it. */
    private static final double TOP = 0.1;
    /** Degrees of bank: what banks less does not turn. */
    private static final double TURNS_DEG = 25;

    private final Path path;
    private final boolean[] lines;
    private final TreeSet<Integer> at = new TreeSet<>();

    private Cuts(Path path) {
        this.path = path;
        lines = Straight.lines(path);
    }

    /** Points, in order, with the first and the last of the path. */
    static int[] of(Path path) {
        Cuts cuts = new Cuts(path);
        cuts.lines();
        cuts.levels();
        return cuts.spaced();
    }

    private void lines() {
        for (int from = 0; from < path.size; from++) {
            int to = from;
            while (to < path.size && lines[to]) {
                to++;
            }
            if ((to - from) * Path.STEP_S >= (isTop(from, to - 1) ? MOMENT_S : LEAST_S)) {
                at.add(from);
                at.add(to - 1);
            }
            from = to;
        }
    }

    /** Where it is level for a moment, or begins or ends to be. */
    private void levels() {
        for (int from = 0; from < path.size; from++) {
            int to = from;
            while (to < path.size && Math.abs(path.climbDeg(to)) < LEVEL_DEG) {
                to++;
            }
            if (to > from) {
                if ((to - from) * Path.STEP_S <= MOMENT_S) {
                    if (!isTop(from, to - 1)) {
                        at.add(flattest(from, to - 1));
                    }
                } else if (!isTop(from, to - 1) || isLineFor(from, to - 1, MOMENT_S)) {
                    int some = (int) Math.round(0.5 * MOMENT_S / Path.STEP_S);
                    at.add(flattest(from, from + some));
                    at.add(flattest(to - 1 - some, to - 1));
                    reversals(from + some, to - 1 - some);
                }
            }
            from = to;
        }
    }

    /** Whether it goes over from a climb to a dive: whoever ends a figure there stays level to show it. */
    private boolean isTop(int from, int to) {
        int before = (int) Math.round(LEAST_S / Path.STEP_S);
        return path.tz[Math.max(0, from - before)] > TOP && path.tz[Math.min(path.size - 1, to + before)] < -TOP;
    }

    private boolean isLineFor(int from, int to, double seconds) {
        int line = 0;
        for (int i = from; i <= to; i++) {
            line = lines[i] ? line + 1 : 0;
            if (line * Path.STEP_S >= seconds) {
                return true;
            }
        }
        return false;
    }

    private int flattest(int from, int to) {
        int flattest = from;
        for (int i = from; i <= to; i++) {
            if (Math.abs(path.tz[i]) < Math.abs(path.tz[flattest])) {
                flattest = i;
            }
        }
        return flattest;
    }

    /** Where a level turn goes over into one the other way, or begins, or ends. */
    private void reversals(int from, int to) {
        for (int i = from + 1; i <= to; i++) {
            if (turns(path.bankDeg(i - 1)) != turns(path.bankDeg(i))) {
                at.add(i);
            }
        }
    }

    private static int turns(double bankDeg) {
        return Math.abs(bankDeg) < TURNS_DEG ? 0 : (int) Math.signum(bankDeg);
    }

    private int[] spaced() {
        at.add(0);
        at.add(path.size - 1);
        List<Integer> kept = new ArrayList<>();
        int gap = (int) Math.round(LEAST_S / Path.STEP_S);
        for (int i : at) {
            if (kept.isEmpty() || i - kept.get(kept.size() - 1) >= gap) {
                kept.add(i);
            }
        }
        int last = kept.size() - 1;
        if (kept.get(last) != path.size - 1) {
            if (last > 0) {
                kept.remove(last);
            }
            kept.add(path.size - 1);
        }
        return kept.stream().mapToInt(i -> i).toArray();
    }
}
