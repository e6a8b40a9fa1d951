package crowdline.follow;

import java.util.ArrayList;
import java.util.List;

/**
 * Looks for figures that are flown though nothing is believed of them. What is too unlikely is forgotten, and what cannot come after
 * what is believed was never thought of; so a follower that has gone astray could only come back where another figure begins. Once a
 * second, unless what is believed explains the path as well as a path does, each place of the plan is asked how well it explains the
 * last seconds, and is believed in as much as if it had never been forgotten.
 */
final class Lookout {
    /** Chance a second that a figure has been begun unnoticed. More finds it sooner, and takes one figure for another. */
    private static final double UNNOTICED_PER_S = 0.01;
    /**
     * The same of a way, of what is flown level, and of a turn round: there is more such flight than is in any plan. More finds them
     * where they are not.
     */
    private static final double LEVEL_PER_S = 1e-6;
    /** So much of what speaks for these counts, for the same reason. */
    private static final double LEVEL_COUNTS = 0.5;
    /** Factor on either for what has been flown, and is not one of the last few figures. Figures are alike. */
    private static final double ONCE_OVER = 1e-3;
    /** Seconds for which a figure must have been seen, to be found. */
    private static final double SOONEST_S = 4;

    private static final double LEVEL_SOONEST_S = 12;
    /** Seconds of climbing or diving by which a figure is told from level flight. */
    private static final double STEEP_S = 2;
    /** Slope from which it climbs or dives. */
    private static final double STEEP = 0.35;
    /** Chance of ways: where one is flown, no other is looked for, as both are flown on any path. */
    private static final double ON_A_WAY = 0.3;

    /** Logarithm, a second, of how well a path explains what is seen of it; what does is not doubted. */
    private static final double WELL = 5;
    /** The same of a figure over its last few looks. */
    private static final double WELL_ENOUGH = 3;

    private static final int FEW = 3;

    /** Chance of what is found, at least. */
    private static final double LEAST = 1e-4;
    /** Bins from one place asked to the next. */
    private static final int EVERY = 2;
    /** Bins within which what is found has been believed in already. */
    private static final int NEAR = 5;
    /** Chance of a figure that is believed in already, or beside one that is. */
    private static final double BELIEVED = 0.02;

    /** Cosine of how far the path may point off what is planned for it to be asked at all. */
    private static final double ALIKE = 0.9;
    /** Factor by which it may be faster or slower. */
    private static final double AS_FAST = 1.6;
    /** Metres a second: at less the path points anywhere. */
    private static final double SLOW_MPS = 12;
    /** Exponent at which what is found is far more than all that is believed. */
    private static final double SURELY = 50;

    private final Bins bins;
    private final Order order;
    private final PathSoFar path;
    private final double[] row;
    /** How many bins before each climb or dive. */
    private final int[] steep;
    /** The speed planned in each bin. */
    private final double[] plannedMps;

    private double explained;

    private record Found(int bin, int direction, double chance, Moments offsets) {}

    Lookout(Bins bins, Fit fit, Order order) {
        this.bins = bins;
        this.order = order;
        path = new PathSoFar(bins, fit);
        row = new double[bins.figures + 2];
        steep = new int[bins.size + 1];
        plannedMps = new double[bins.size];
        for (int i = 0; i < bins.size; i++) {
            plannedMps[i] = Math.sqrt(bins.squareOfSpeed(i));
            boolean is = !bins.timed[i] && Math.abs(bins.vzMps[i]) > STEEP * plannedMps[i];
            steep[i + 1] = steep[i] + (is ? 1 : 0);
        }
    }

    /** Somebody has said what is flown: what was seen before says nothing of it. */
    void clear() {
        path.clear();
    }

    /**
     * Takes a reading by which all has been weighed, and adds what it finds.
     *
     * @param fits how well all that is believed has explained it, see {@link Belief#total}
     */
    void look(Belief belief, Seen seen, double tS, double fits) {
        if (!(fits > 0) || !Double.isFinite(fits)) {
            path.clear();
            return;
        }
        explained += Math.log(fits);
        if (!path.add(tS, seen, explained) || path.size() <= FEW || isExplained(belief)) {
            return;
        }
        order.afterUnknown(row);
        List<Found> found = new ArrayList<>();
        boolean onWay = onWays(belief) >= ON_A_WAY;
        for (int f = 0; f < bins.figures; f++) {
            boolean none = bins.timed[bins.first[f]] || (onWay && isLevel(f, bins.first[f], bins.first[f + 1] - 1));
            if (!none && !isBelieved(belief, f)) {
                look(belief, f, onWay, found);
            }
        }
        double sum = found.stream().mapToDouble(Found::chance).sum();
        for (Found one : found) {
            for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
                int lane = Lanes.of(one.direction, tempo);
                belief.add(lane, one.bin, one.offsets, 2 * Lanes.share(lane) * one.chance / Math.max(1, sum));
            }
        }
    }

    private boolean isExplained(Belief belief) {
        if (belief.before > 0.5 || path.explainedPerS(path.size() - 1) > WELL) {
            return true;
        }
        for (int f = 0; f < bins.figures; f++) {
            boolean shown = !bins.timed[bins.first[f]] && bins.way(f) == null;
            if (shown && belief.in(f) > 0.5 && path.explainedPerS(FEW) > WELL_ENOUGH) {
                return true;
            }
        }
        return false;
    }

    private double onWays(Belief belief) {
        double sum = 0;
        for (int f = 0; f < bins.figures; f++) {
            sum += bins.way(f) == null ? 0 : belief.in(f);
        }
        return sum;
    }

    /** Whether a figure, or one beside it, is believed in: then its time and its boundaries tell where in it the aircraft is. */
    private boolean isBelieved(Belief belief, int f) {
        return belief.in(f) > BELIEVED
                || (f > 0 && belief.in(f - 1) > BELIEVED)
                || (f + 1 < bins.figures && belief.in(f + 1) > BELIEVED);
    }

    private void look(Belief belief, int f, boolean onWay, List<Found> found) {
        for (int bin = bins.first[f]; bin < bins.first[f + 1]; bin += EVERY) {
            int from = Math.max(bins.first[f], path.binThen(bin, path.size() - 1));
            boolean level = isLevel(f, from, bin);
            if ((bin - from) * Bins.WIDTH_S < (level ? LEVEL_SOONEST_S : SOONEST_S) || (level && onWay)) {
                continue;
            }
            boolean over = level ? order.flown(f) > 0.5 : order.isLongAgo(f);
            double perS = (level ? LEVEL_PER_S : UNNOTICED_PER_S) * (over ? ONCE_OVER : 1);
            double begun = perS * EVERY * Bins.WIDTH_S * row[f] / 2;
            double counts = level ? LEVEL_COUNTS : 1;
            double enough = Math.log(LEAST / begun) / counts;
            for (int direction = 0; direction < 2; direction++) {
                if (!isAlike(bin, direction, 0) || !isAlike(Math.max(from, path.binThen(bin, 2)), direction, 2)) {
                    continue;
                }
                double better = counts * path.betterThanBelieved(bin, direction, enough);
                double chance = begun * Math.exp(Math.min(better, SURELY));
                if (chance > LEAST && chance > 2 * near(belief, bin, direction)) {
                    Moments offsets = new Moments();
                    offsets.set(path.offsets());
                    found.add(new Found(bin, direction, chance, offsets));
                }
            }
        }
    }

    /** Whether what has been flown of a figure between two bins may be any level flight. */
    private boolean isLevel(int f, int from, int to) {
        return bins.way(f) != null || bins.round[f] || (steep[to + 1] - steep[from]) * Bins.WIDTH_S < STEEP_S;
    }

    /** Whether the path points nearly where it is planned to in a bin, nearly as fast. */
    private boolean isAlike(int bin, int direction, int looksAgo) {
        Seen seen = path.seen(looksAgo);
        double climb = seen.hasClimb() ? seen.climbMps() : bins.vzMps[bin];
        double along = direction == 0 ? seen.alongMps() : -seen.alongMps();
        double dot = along * bins.vxMps[bin] + seen.awayMps() * bins.vyMps[bin] + climb * bins.vzMps[bin];
        double squares = seen.alongMps() * seen.alongMps() + seen.awayMps() * seen.awayMps() + climb * climb;
        double planned = plannedMps[bin];
        if (squares < SLOW_MPS * SLOW_MPS || planned < SLOW_MPS) {
            return true;
        }
        double mps = dot > 0 ? Math.sqrt(squares) : 0;
        return dot > ALIKE * mps * planned && mps < AS_FAST * planned && planned < AS_FAST * mps;
    }

    /** What is believed of a figure near a bin. */
    private double near(Belief belief, int bin, int direction) {
        int f = bins.figure[bin];
        double sum = 0;
        for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
            int lane = Lanes.of(direction, tempo);
            for (int i = Math.max(bins.first[f], bin - NEAR); i <= Math.min(bins.first[f + 1] - 1, bin + NEAR); i++) {
                sum += belief.chance[belief.state(lane, i)];
            }
        }
        return sum;
    }
}
