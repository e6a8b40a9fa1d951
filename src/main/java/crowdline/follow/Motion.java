package crowdline.follow;

import java.util.Arrays;

/** How the hidden state moves by itself in one step of time; the clock of the filter. */
final class Motion {
    /** One step, seconds. */
    static final double STEP_S = 0.1;

    private static final int REACH = 5;
    /** Variance of phase won in a step, square bins: the least a bin allows is near a quarter. Tuned. */
    private static final double LEAST_VARIANCE = 0.25;

    private static final double MOST_VARIANCE = 0.75;
    /** Chances of winning 1 to 4 bins on a line that may be cut short or drawn out, given that it wins any. Tuned. */
    private static final double[] LEAPS = {0.375, 0.3125, 0.1875, 0.125};

    private static final double LEAP = 2.0625;
    /** A level line to the end of a figure may be cut short, per second. Tuned. */
    private static final double CUT_SHORT_PER_S = 0.08;
    /** A figure is broken off, per second. Tuned: about once in eight minutes if nothing is seen. */
    private static final double BROKEN_OFF_PER_S = 1 / 500.0;

    static final double OFF = BROKEN_OFF_PER_S * STEP_S;
    static final double CUT = CUT_SHORT_PER_S * STEP_S;
    private static final double BACK_PER_S = 0.07;
    private static final double OFF_TO_END_PER_S = 1 / 120.0;
    private static final double BEGINS_PER_S = 1 / 60.0;
    /** Share of what comes back to the plan that does so within a figure and not at its start. */
    private static final double WITHIN = 0.15;

    private static final int WITHIN_EVERY = 10;

    /** How fast the offsets may wander, square metres a second: (6 m)² of height and (8 m)² along. Tuned. */
    private static final double WANDER_M2_PER_S = 36;

    private static final double WANDER_ALONG_M2_PER_S = 64;

    /** Variance the offsets gain from one figure to the next, and where the order changes. Tuned. */
    private static final double NEXT_M2 = 10 * 10;

    private static final double NEXT_ALONG_M2 = 20 * 20;
    private static final double ANYWHERE_M2 = 90 * 90;
    private static final double ANYWHERE_ALONG_M2 = 500 * 500;
    /** What was taken for a landing turns out to be something else, per second. Tuned. */
    private static final double TIMED_OFF_PER_S = 0.1;
    /** A line to a place or a height ends so often a second once there, and before. Tuned. */
    private static final double ENDS_PER_S = 4;

    private static final double ENDS_EARLY_PER_S = 0.03;
    /** How near a pilot comes to such a place, and to such a height, metres. Tuned. */
    private static final double NEAR_PLACE_M = 15.6;

    private static final double NEAR_HEIGHT_M = 9.6;
    /** Chance that what follows as planned goes the way it is expected to. Tuned. */
    private static final double SAME_WAY = 0.95;

    private static final double LEAST_POOL = 1e-6;

    /** The way back to the plan is tried every so many steps: chances too small for one step would be forgotten. */
    private static final int RETURN_EVERY = 5;

    private final Bins bins;
    private final double[] rate;
    private final double[][] kernels;
    private final Order order;
    private final double[] row;
    private final Moments[] pool;
    private final Moments here = new Moments();
    private final Moments there = new Moments();
    private long steps;

    /**
     * @param rate of each figure, predicted seconds a second
     * @param variance of each figure, square seconds a second
     */
    Motion(Bins bins, double[] rate, double[] variance, Order order) {
        this.bins = bins;
        this.order = order;
        this.rate = rate;
        row = new double[bins.figures + 2];
        pool = new Moments[Lanes.COUNT * bins.figures];
        Arrays.setAll(pool, i -> new Moments());
        kernels = new double[Lanes.TEMPOS * bins.figures * 2][];
        for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
            for (int f = 0; f < bins.figures; f++) {
                double mean = rate[f] * Lanes.tempo(tempo) * STEP_S / Bins.WIDTH_S;
                double v = variance[f] * STEP_S / (Bins.WIDTH_S * Bins.WIDTH_S);
                int k = (tempo * bins.figures + f) * 2;
                kernels[k] = kernel(mean, v);
                kernels[k + 1] = elastic(mean);
            }
        }
    }

    /** Chances of winning 0, 1, 2 bins with this mean, and this variance as far as that allows. */
    static double[] kernel(double meanBins, double varianceBins2) {
        double mean = Math.min(Math.max(meanBins, 0.05), 1);
        double[] p = {1 - mean, mean, 0, 0, 0};
        double wanted = Math.min(Math.max(varianceBins2, LEAST_VARIANCE), MOST_VARIANCE);
        double moved = Math.min(Math.max(wanted - mean * (1 - mean), 0), mean);
        p[0] += moved / 2;
        p[1] -= moved;
        p[2] += moved / 2;
        return p;
    }

    /** The same for a line that may be cut short or drawn out: the mean is kept. */
    static double[] elastic(double meanBins) {
        double some = Math.min(Math.max(meanBins, 0.05), 1) / LEAP;
        double[] p = new double[REACH];
        p[0] = 1 - some;
        for (int k = 1; k < REACH; k++) {
            p[k] = some * LEAPS[k - 1];
        }
        return p;
    }

    private double[] kernel(int lane, int bin) {
        int k = (lane % Lanes.TEMPOS * bins.figures + bins.figure[bin]) * 2;
        return kernels[bins.elastic[bin] ? k + 1 : k];
    }

    /** One step of time; {@code to} is overwritten. A held figure is neither broken off nor cut short. */
    void step(Belief from, Belief to, int held) {
        to.clear();
        for (Moments part : pool) {
            part.clear();
        }
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            for (int f = 0; f < bins.figures; f++) {
                push(from, to, lane, f, f == held);
            }
        }
        leave(to);
        specials(from, to);
    }

    private void push(Belief from, Belief to, int lane, int f, boolean held) {
        int block = lane * bins.figures + f;
        int low = from.low[block];
        int high = from.high[block];
        if (low > high) {
            return;
        }
        int base = lane * bins.size;
        for (int i = low; i <= high; i++) {
            if (from.chance[base + i] == 0) {
                continue;
            }
            here.set(from, base + i);
            here.widen(WANDER_ALONG_M2_PER_S * STEP_S, WANDER_M2_PER_S * STEP_S);
            double keep = 1;
            if (!held) {
                double off = bins.timed[i] && f > 0 ? TIMED_OFF_PER_S * STEP_S : OFF;
                to.off += here.chance * off;
                keep -= off;
                if (bins.ending[i]) {
                    pool[block].add(here, CUT);
                    keep -= CUT;
                }
            }
            int lineEnd = bins.lineEnd[i];
            if (lineEnd > 0) {
                keep -= endLine(to, lane, i, keep);
            }
            double[] p = kernel(lane, i);
            for (int k = 0; k < REACH; k++) {
                if (p[k] == 0) {
                    continue;
                }
                int won = lineEnd > 0 ? Math.min(k, lineEnd - 1 - i) : k;
                if (bins.elastic[i]) {
                    // The aircraft flies on as it does, however much of the line is thought to be behind it.
                    double stretchS = (elasticMean(lane, f) - won) * Bins.WIDTH_S;
                    there.moved(here, stretchS * bins.vxMps[i], stretchS * bins.vzMps[i]);
                } else {
                    there.set(here);
                }
                put(to, lane, f, i + won, there, keep * p[k]);
            }
        }
    }

    /**
     * A line flown to a place or a height ends once the aircraft is there, wherever it was taken up.
     *
     * @return the share that leaves the line
     */
    private double endLine(Belief to, int lane, int i, double keep) {
        boolean height = bins.toHeight[i];
        double mean = (height ? here.height : here.along) / here.chance;
        double variance = Math.max((height ? here.height2 : here.along2) / here.chance - mean * mean, 0);
        double near = height ? NEAR_HEIGHT_M : NEAR_PLACE_M;
        double speed = height ? bins.vzMps[i] : bins.vxMps[i];
        double leftS = (bins.lineEnd[i] - i - 0.5) * Bins.WIDTH_S;
        double overM = Math.signum(speed) * (mean - leftS * speed);
        double reached = 1 / (1 + Math.exp(-1.7 * overM / Math.sqrt(variance + near * near)));
        double share = keep * STEP_S * (ENDS_EARLY_PER_S + ENDS_PER_S * reached);
        there.moved(here, -leftS * bins.vxMps[i], -leftS * bins.vzMps[i]);
        put(to, lane, bins.figure[i], bins.lineEnd[i], there, share);
        return share;
    }

    /** Puts a share at a bin, or among what leaves the figure if the bin is past its end. */
    private void put(Belief to, int lane, int f, int bin, Moments m, double share) {
        if (bin < bins.first[f + 1]) {
            to.add(lane, bin, m, share);
        } else {
            pool[lane * bins.figures + f].add(m, share);
        }
    }

    /** Bins won in a step on the mean. */
    private double elasticMean(int lane, int f) {
        return Math.min(Math.max(rate[f] * Lanes.tempo(lane) * STEP_S / Bins.WIDTH_S, 0.05), 1);
    }

    private void leave(Belief to) {
        for (int f = 0; f < bins.figures; f++) {
            double leaving = 0;
            for (int lane = 0; lane < Lanes.COUNT; lane++) {
                leaving += pool[lane * bins.figures + f].chance;
            }
            if (leaving < LEAST_POOL) {
                continue;
            }
            order.after(f, row);
            to.off += leaving * row[bins.figures];
            to.after += leaving * row[bins.figures + 1];
            for (int g = 0; g < bins.figures; g++) {
                double w = row[g];
                if (w * leaving < LEAST_POOL) {
                    continue;
                }
                for (int lane = 0; lane < Lanes.COUNT; lane++) {
                    enter(to, pool[lane * bins.figures + f], lane, g, w, g == f + 1);
                }
            }
        }
    }

    private void enter(Belief to, Moments leaving, int lane, int g, double w, boolean planned) {
        if (leaving.chance == 0) {
            return;
        }
        if (planned) {
            here.set(leaving);
            here.widen(NEXT_ALONG_M2, NEXT_M2);
        } else {
            here.set(anywhere(leaving.chance));
        }
        double same = planned ? SAME_WAY : 0.5;
        for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
            double s = Lanes.next(lane % Lanes.TEMPOS, tempo);
            int direction = Lanes.direction(lane);
            to.add(Lanes.of(direction, tempo), bins.first[g], here, w * s * same);
            to.add(Lanes.of(1 - direction, tempo), bins.first[g], here, w * s * (1 - same));
        }
    }

    private void specials(Belief from, Belief to) {
        double begins = from.before * BEGINS_PER_S * STEP_S;
        to.before += from.before - begins;
        start(to, 0, begins * 0.97);
        to.off += begins * 0.03;
        boolean returns = ++steps % RETURN_EVERY == 0;
        double back = returns ? from.off * BACK_PER_S * STEP_S * RETURN_EVERY : 0;
        double ends = from.off * OFF_TO_END_PER_S * STEP_S;
        to.off += from.off - back - ends;
        to.after += from.after + ends;
        if (back < LEAST_POOL) {
            return;
        }
        order.afterUnknown(row);
        for (int g = 0; g < bins.figures; g++) {
            double w = back * row[g];
            if (w < LEAST_POOL) {
                continue;
            }
            int places = (bins.length(g) - 1) / WITHIN_EVERY;
            start(to, g, places == 0 ? w : w * (1 - WITHIN));
            for (int k = 1; k <= places; k++) {
                anyLane(to, bins.first[g] + k * WITHIN_EVERY, w * WITHIN / places);
            }
        }
    }

    private void start(Belief to, int g, double w) {
        anyLane(to, bins.first[g], w);
    }

    /** Puts a chance where nothing is known of direction, tempo and offsets. */
    private static void anyLane(Belief to, int bin, double w) {
        Moments m = anywhere(w);
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            to.add(lane, bin, m, 0.5 * Lanes.share(lane % Lanes.TEMPOS));
        }
    }

    /** A chance of which nothing is known of the offsets. */
    static Moments anywhere(double chance) {
        return Moments.of(chance, ANYWHERE_ALONG_M2, ANYWHERE_M2);
    }
}
