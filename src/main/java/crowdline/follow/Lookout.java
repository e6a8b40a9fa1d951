package crowdline.follow;

import java.util.ArrayList;
import java.util.List;

/**
 * Looks, while it is off the plan, for the figure in which it has come back. It comes back where a figure begins, and what is too
 * unlikely is forgotten; so a figure whose first seconds fitted badly was lost, however well it fitted later, until another began. Once
 * a second each place of the plan is asked how well a figure that has come there by now would have explained what was seen since it
 * began, and is believed in as much as if it had never been forgotten: as likely as it was to be off the plan then and to come back, times
 * how much better it explains what was seen than all that was believed.
 */
final class Lookout {
    /**
     * Chance that it is off the plan, from which it is looked for. While something of the plan explains the path badly, others may
     * explain it better and be as wrong.
     */
    private static final double OFF = 0.5;
    /** Chance that a figure is the one it comes back to; less likely ones are not looked for. */
    private static final double FAR = 0.003;
    /** Chance of a figure that is believed in already: its own time tells better where in it the aircraft is. */
    private static final double BELIEVED = 0.02;

    /** Seconds for which a figure must have been seen, to be found. */
    private static final double SOONEST_S = 3;
    /** Of these, seconds in which it climbs or dives: there is more level flight than is in any plan. */
    private static final double STEEP_S = 2;
    /** Slope from which it climbs or dives. */
    private static final double STEEP = 0.35;
    /** Seconds for which a way must have been seen. */
    private static final double WAY_SOONEST_S = 8;
    /**
     * Logarithm, a second, of how well a way must explain what was seen. On any path it is explained with 4.0 (see {@link Way}), so
     * this tells a way that is flown as planned.
     */
    private static final double WAY_EXPLAINS_PER_S = 4.2;

    /** Chance of what is found, at least. */
    private static final double LEAST = 1e-4;
    /** Bins from one place asked to the next. */
    private static final int EVERY = 2;
    /** Bins within which what is found has been believed in already. */
    private static final int NEAR = 5;

    /** Looks back, at which the path is compared first, and how many there must be. */
    private static final int FEW = 2;
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
        boolean isNew = path.add(tS, seen, explained, belief.unplanned());
        if (!isNew || path.size() <= FEW + 1 || belief.unplanned() < OFF) {
            return;
        }
        double left = order.afterUnknown(row);
        List<Found> found = new ArrayList<>();
        for (int f = 0; f < bins.figures; f++) {
            if (!bins.timed[bins.first[f]] && row[f] > FAR && belief.in(f) < BELIEVED) {
                look(belief, f, left * row[f], found);
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

    /** @param comes chance that this is the figure which comes after what is not in the plan */
    private void look(Belief belief, int f, double comes, List<Found> found) {
        boolean way = bins.isWay(f);
        double begins = OutsidePlan.BACK_PER_S * EVERY * Bins.WIDTH_S * comes / 2;
        double enough = Math.log(LEAST / begins);
        for (int bin = bins.first[f]; bin < bins.first[f + 1]; bin += EVERY) {
            int from = Math.max(bins.first[f], path.binThen(bin, path.size() - 1));
            if ((bin - from) * Bins.WIDTH_S < (way ? WAY_SOONEST_S : SOONEST_S) || (!way && isLevel(f, from, bin))) {
                continue;
            }
            for (int direction = 0; direction < 2; direction++) {
                if (!isAlike(bin, direction, 0) || !isAlike(Math.max(from, path.binThen(bin, FEW)), direction, FEW)) {
                    continue;
                }
                double likelier = path.likelierSinceOff(bin, direction, enough);
                double chance = begins * Math.exp(Math.min(likelier, SURELY));
                if (chance > LEAST
                        && (!way || path.explainsPerS() > WAY_EXPLAINS_PER_S)
                        && chance > 2 * near(belief, bin, direction)) {
                    Moments offsets = new Moments();
                    offsets.set(path.offsets());
                    found.add(new Found(bin, direction, chance, offsets));
                }
            }
        }
    }

    /** Whether what has been flown of a figure between two bins may be any level flight, or any turn. */
    private boolean isLevel(int f, int from, int to) {
        return bins.round[f] || (steep[to + 1] - steep[from]) * Bins.WIDTH_S < STEEP_S;
    }

    /** Whether the path points nearly where it is planned to in a bin, nearly as fast. */
    private boolean isAlike(int bin, int direction, int looksAgo) {
        Seen seen = path.seen(looksAgo);
        double climb = seen.hasClimb() ? seen.climbMps() : bins.vzMps[bin];
        double along = direction == 0 ? seen.alongMps() : -seen.alongMps();
        double dot = along * bins.vxMps[bin] + seen.awayMps() * bins.vyMps[bin] + climb * bins.vzMps[bin];
        double mps = Math.sqrt(seen.groundMps() * seen.groundMps() + climb * climb);
        double planned = plannedMps[bin];
        return mps < SLOW_MPS
                || planned < SLOW_MPS
                || (dot > ALIKE * mps * planned && mps < AS_FAST * planned && planned < AS_FAST * mps);
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
