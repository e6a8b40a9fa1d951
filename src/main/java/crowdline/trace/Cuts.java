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
    /** Degrees of a steep turn, and of each half of a Derry turn. */
    private static final double CIRCLE_DEG = 360;

    private static final double SWING_DEG = 60;
    /** Degrees: what turns no further ends there. */
    private static final double GOES_ON_DEG = 15;

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

    /** A turn to one side: from one point to another, and how far, degrees. */
    private record Turn(int from, int to, double deg) {}

    /** Where a level turn goes over into one the other way, or begins, or ends, or is as far round as a figure. */
    private void reversals(int from, int to) {
        Turn last = null;
        int begun = from;
        for (int i = from + 1; i <= to; i++) {
            int before = turns(path.bankDeg(i - 1));
            boolean ends = before != turns(path.bankDeg(i));
            if (ends) {
                at.add(i);
            }
            if (before != 0 && (ends || i == to)) {
                Turn turn = new Turn(begun, i, path.turnedDeg(begun, i));
                circle(turn);
                if (last != null) {
                    swing(last, turn);
                }
                last = turn;
            }
            begun = ends ? i : begun;
        }
    }

    /** Where a full circle ends, or begins, though the turn goes on. */
    private void circle(Turn turn) {
        if (Math.abs(turn.deg) > CIRCLE_DEG + GOES_ON_DEG) {
            at.add(round(turn.from, turn.to, CIRCLE_DEG));
            at.add(round(turn.from, turn.to, Math.abs(turn.deg) - CIRCLE_DEG));
        }
    }

    /** Where a swing to one side and back ends, or begins, though the turn goes on. */
    private void swing(Turn one, Turn other) {
        if (one.deg * other.deg < 0) {
            if (isSwing(one) && Math.abs(other.deg) > SWING_DEG + GOES_ON_DEG) {
                at.add(round(other.from, other.to, SWING_DEG));
            } else if (isSwing(other) && Math.abs(one.deg) > SWING_DEG + GOES_ON_DEG) {
                at.add(round(one.from, one.to, Math.abs(one.deg) - SWING_DEG));
            }
        }
    }

    private static boolean isSwing(Turn turn) {
        return Math.abs(Math.abs(turn.deg) - SWING_DEG) <= GOES_ON_DEG;
    }

    /** Where it has turned so far. */
    private int round(int from, int to, double deg) {
        int i = from;
        for (double turned = 0; i < to && turned < deg; i++) {
            turned += Math.abs(path.turnDegPerS(i)) * Path.STEP_S;
        }
        return i;
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
