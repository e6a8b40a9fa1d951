package crowdline.flight.moment;

import crowdline.flight.ElementFlight;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.flight.moment.FigureMoments.Seen;
import crowdline.show.figure.Element;
import crowdline.show.figure.MomentKind;
import java.util.ArrayList;
import java.util.List;

/**
 * What there is to see in where the nose points along a stretch of path: up from level, over, down and out again. Works on
 * samples alone, so that any way of flying there is found; starts are as exact as the samples lie close.
 */
final class PathMoments {
    /** Steeper than this it climbs or dives, degrees. */
    private static final double STEEP_DEG = 15;
    /** Flatter than this it is level again, degrees. */
    private static final double LEVEL_DEG = 6;
    /** As good as level, degrees: where a half loop is at its top. */
    private static final double FLAT_DEG = 0.3;
    /** A climb steeper than this is pushed over; a flatter one is levelled off. */
    private static final double PUSHED_OVER_DEG = 30;
    /** Level for less than this is only on its way through, seconds. */
    private static final double PASSING_S = 1;
    /** Steeper than this looks straight up or down, degrees. */
    private static final double STRAIGHT_DEG = 80;
    /** So long at least, seconds. */
    private static final double STRAIGHT_S = 0.7;
    /** The nose moves less than this from one sample to the next where it is held still, degrees. */
    private static final double STILL_DEG = 0.2;

    private enum Way {
        UP,
        LEVEL,
        DOWN
    }

    private final List<Sample> run;
    private final List<ElementFlight> elements;
    private final double[] pathDeg;
    private final boolean steepAlready;
    private final List<Seen> seen = new ArrayList<>();
    /** True if the climb being flown was begun by pushing. */
    private boolean pushedUp;

    /** @param steepAlready true if what comes before it tells that it begins straight up or down */
    private PathMoments(List<Sample> run, List<ElementFlight> elements, boolean steepAlready) {
        this.run = run;
        this.elements = elements;
        this.steepAlready = steepAlready;
        pathDeg = run.stream().mapToDouble(Sample::pathAngleDeg).toArray();
    }

    /** The stretches of a figure's path between the elements whose nose does not tell where they fly. */
    static List<PathMoments> runs(List<Sample> own, List<ElementFlight> elements, List<ElementMoments> moments) {
        List<PathMoments> runs = new ArrayList<>();
        double fromS = Double.NEGATIVE_INFINITY;
        boolean steepAlready = false;
        for (int i = 0; i < elements.size(); i++) {
            if (moments.get(i).ownFromS() < Double.POSITIVE_INFINITY) {
                runs.add(new PathMoments(
                        FigureMoments.within(own, fromS, moments.get(i).ownFromS()), elements, steepAlready));
                fromS = elements.get(i).endS();
                Element element = elements.get(i).element();
                steepAlready = !(element instanceof Element.Pivot || element instanceof Element.Slide);
            }
        }
        runs.add(new PathMoments(FigureMoments.within(own, fromS, Double.POSITIVE_INFINITY), elements, steepAlready));
        return runs;
    }

    List<Seen> seen() {
        if (run.size() < 2) {
            return List.of();
        }
        Way way = wayAt(0, Way.LEVEL);
        for (int i = 1; i < run.size(); i++) {
            Way now = wayAt(i, way);
            if (now != way) {
                changed(way, now, i);
                way = now;
            }
        }
        straight();
        return seen;
    }

    /** Where it goes at a sample, keeping to {@code before} between level and steep. */
    private Way wayAt(int i, Way before) {
        double deg = pathDeg[i];
        if (deg >= STEEP_DEG) {
            return Way.UP;
        } else if (deg <= -STEEP_DEG) {
            return Way.DOWN;
        }
        boolean throughLevel = before == Way.UP ? deg < 0 : before == Way.DOWN && deg > 0;
        return throughLevel || Math.abs(deg) <= LEVEL_DEG ? Way.LEVEL : before;
    }

    private void changed(Way from, Way to, int i) {
        if (from == Way.UP) {
            overOrLevel(to, i);
            return;
        }
        if (from == Way.DOWN) {
            int start = startOfRise(i);
            add(pulls(start) ? MomentKind.PULLS_OUT : MomentKind.PUSHES_OUT, start);
        }
        if (to == Way.UP) {
            int start = startOfRise(i);
            int level = start;
            while (pathDeg[level] < 0 && level < i) {
                level++;
            }
            pushedUp = !pulls(level);
            add(pushedUp ? MomentKind.PUSHES_UP : MomentKind.PULLS_UP, level);
        } else if (to == Way.DOWN && !justOver(i)) {
            add(MomentKind.HEADS_DOWN, startOfFall(i));
        }
    }

    /** Whether this descent only goes on from the top. */
    private boolean justOver(int i) {
        if (seen.isEmpty() || seen.get(seen.size() - 1).kind() != MomentKind.OVER_THE_TOP) {
            return false;
        }
        return run.get(startOfFall(i)).tS() - seen.get(seen.size() - 1).tS() < PASSING_S;
    }

    private void overOrLevel(Way to, int i) {
        int start = startOfFall(i);
        boolean pulled = pulls(start);
        boolean round = run.get(i).up().z() < 0 ? pulled : !pulled && pushedUp;
        if (to == Way.DOWN || round || passesThrough(i)) {
            seen.add(new Seen(MomentKind.OVER_THE_TOP, flatS(i)));
        } else if (!pulled && steepest(start) > PUSHED_OVER_DEG) {
            add(MomentKind.PUSHES_OVER, start);
        } else {
            seen.add(new Seen(MomentKind.LEVELS_OFF, flatS(i)));
        }
    }

    /** Whether the nose, level at a sample, goes on falling until it is steeply down, or is so very soon. */
    private boolean passesThrough(int i) {
        boolean falls = true;
        for (int k = i; k < run.size(); k++) {
            if (pathDeg[k] <= -STEEP_DEG) {
                return true;
            }
            falls &= pathDeg[k] <= pathDeg[k - 1] - STILL_DEG / 2;
            if (!falls && run.get(k).tS() - run.get(i).tS() >= PASSING_S) {
                return false;
            }
        }
        return false;
    }

    private double steepest(int start) {
        double most = pathDeg[start];
        for (int k = start; k > 0 && pathDeg[k] > LEVEL_DEG; k--) {
            most = Math.max(most, pathDeg[k]);
        }
        return most;
    }

    /** When the nose, falling, is as good as level: from the first sample on where it climbs no longer. */
    private double flatS(int from) {
        int k = from;
        while (k < run.size() - 1 && pathDeg[k] > FLAT_DEG && pathDeg[k + 1] < pathDeg[k]) {
            k++;
        }
        if (k < 2 || pathDeg[k] > FLAT_DEG) {
            return run.get(k).tS();
        }
        // It may be held level from within the last step on, so the slope is that of the step before.
        double perS = (pathDeg[k - 2] - pathDeg[k - 1])
                / (run.get(k - 1).tS() - run.get(k - 2).tS());
        return Math.min(
                run.get(k - 1).tS() + (pathDeg[k - 1] - FLAT_DEG) / Math.max(perS, 1e-9),
                run.get(k).tS());
    }

    private int startOfRise(int i) {
        int k = i;
        while (k > 0 && pathDeg[k - 1] < pathDeg[k] - STILL_DEG / 2) {
            k--;
        }
        return k;
    }

    private int startOfFall(int i) {
        int k = i;
        while (k > 0 && pathDeg[k - 1] > pathDeg[k] + STILL_DEG / 2) {
            k--;
        }
        return k;
    }

    /** Whether the nose moves towards the pilot's up from a sample on. */
    private boolean pulls(int i) {
        int k = Math.min(i, run.size() - 3);
        if (k < 0) {
            return true;
        }
        Vec turned = run.get(k + 2).nose().minus(run.get(k + 1).nose());
        return turned.dot(run.get(k + 1).up()) >= 0;
    }

    /** At a sample, or at the start of an element between it and the next, which is when it happens. */
    private void add(MomentKind kind, int i) {
        add(kind, i, i + 1, run.get(i).tS());
    }

    private void add(MomentKind kind, int from, int to, double elseS) {
        double fromS = run.get(Math.max(from, 0)).tS();
        double toS = run.get(Math.min(to, run.size() - 1)).tS();
        double starts = elements.stream()
                .mapToDouble(ElementFlight::startS)
                .filter(s -> s > fromS && s < toS)
                .max()
                .orElse(elseS);
        seen.add(new Seen(kind, starts));
    }

    private void straight() {
        int i = 0;
        while (i < run.size()) {
            int end = i;
            while (Math.abs(pathDeg[i]) > STRAIGHT_DEG
                    && end + 1 < run.size()
                    && Math.abs(pathDeg[end + 1] - pathDeg[end]) < STILL_DEG) {
                end++;
            }
            if (run.get(end).tS() - run.get(i).tS() >= STRAIGHT_S - 1e-6 && !(steepAlready && i < 2)) {
                MomentKind kind = pathDeg[i] > 0 ? MomentKind.STRAIGHT_UP : MomentKind.STRAIGHT_DOWN;
                add(kind, i - 1, i, run.get(i).tS());
            }
            i = end + 1;
        }
    }
}
