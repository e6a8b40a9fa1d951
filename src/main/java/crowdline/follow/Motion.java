package crowdline.follow;

/** How the hidden state moves by itself in one step of time; the clock of the filter. */
final class Motion {
    /** One step, seconds. */
    static final double STEP_S = 0.1;

    private static final int REACH = 3;
    /** Variance of phase won in a step, square bins: the least a bin allows is near a quarter. Tuned. */
    private static final double LEAST_VARIANCE = 0.25;

    private static final double MOST_VARIANCE = 0.75;
    private static final double ELASTIC_VARIANCE = 0.7;
    /** A level line to the end of a figure may be cut short, per second. Tuned. */
    private static final double CUT_SHORT_PER_S = 0.08;
    /** A figure is broken off, per second. Tuned: about once in eight minutes if nothing is seen. */
    private static final double BROKEN_OFF_PER_S = 1 / 500.0;

    private static final double OFF = BROKEN_OFF_PER_S * STEP_S;
    private static final double CUT = CUT_SHORT_PER_S * STEP_S;
    private static final double BACK_PER_S = 1 / 10.0;
    private static final double OFF_TO_END_PER_S = 1 / 120.0;
    private static final double BEGINS_PER_S = 1 / 60.0;
    /** Share of what comes back to the plan that does so within a figure and not at its start. */
    private static final double WITHIN = 0.15;

    private static final int WITHIN_EVERY = 10;

    /** How fast the height offset may wander, square metres a second: (6 m)² in each. Tuned. */
    private static final double WANDER_M2_PER_S = 36;

    /** Variance the height offset gains from one figure to the next, and where the order changes. */
    private static final double NEXT_M2 = 10 * 10;

    static final double ANYWHERE_M2 = 90 * 90;
    private static final double LEAST_POOL = 1e-9;

    private final Bins bins;
    private final double[][] kernels;
    private final Order order;
    private final double[] row;
    private final double[][] pool;

    /**
     * @param rate of each figure, predicted seconds a second
     * @param variance of each figure, square seconds a second
     */
    Motion(Bins bins, double[] rate, double[] variance, Order order) {
        this.bins = bins;
        this.order = order;
        row = new double[bins.figures + 2];
        pool = new double[3][2 * bins.figures * Lanes.TEMPOS];
        kernels = new double[Lanes.TEMPOS * bins.figures * 2][];
        for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
            for (int f = 0; f < bins.figures; f++) {
                double mean = rate[f] * Lanes.tempo(tempo) * STEP_S / Bins.WIDTH_S;
                double v = variance[f] * STEP_S / (Bins.WIDTH_S * Bins.WIDTH_S);
                int k = (tempo * bins.figures + f) * 2;
                kernels[k] = kernel(mean, v);
                kernels[k + 1] = kernel(mean, Math.max(v, ELASTIC_VARIANCE));
            }
        }
    }

    /** Chances of winning 0, 1, 2 bins with this mean, and this variance as far as that allows. */
    static double[] kernel(double meanBins, double varianceBins2) {
        double mean = Math.min(Math.max(meanBins, 0.05), 1);
        double[] p = {1 - mean, mean, 0};
        double wanted = Math.min(Math.max(varianceBins2, LEAST_VARIANCE), MOST_VARIANCE);
        double moved = Math.min(Math.max(wanted - mean * (1 - mean), 0), mean);
        p[0] += moved / 2;
        p[1] -= moved;
        p[2] += moved / 2;
        return p;
    }

    private double[] kernel(int lane, int bin) {
        int k = (lane % Lanes.TEMPOS * bins.figures + bins.figure[bin]) * 2;
        return kernels[bins.elastic[bin] ? k + 1 : k];
    }

    /** One step of time; {@code to} is overwritten. A held figure is neither broken off nor cut short. */
    void step(Belief from, Belief to, int held) {
        to.clear();
        for (double[] part : pool) {
            java.util.Arrays.fill(part, 0);
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
        int end = bins.first[f + 1];
        int base = lane * bins.size;
        for (int i = low; i <= high; i++) {
            double c = from.chance[base + i];
            if (c == 0) {
                continue;
            }
            double m = from.mean[base + i];
            double q = from.square[base + i] + c * WANDER_M2_PER_S * STEP_S;
            double keep = 1;
            if (!held && !bins.timed[i]) {
                to.off += c * OFF;
                keep -= OFF;
                if (bins.elastic[i]) {
                    collect(block, CUT, c, m, q);
                    keep -= CUT;
                }
            }
            double[] p = kernel(lane, i);
            for (int k = 0; k < REACH; k++) {
                double share = keep * p[k];
                if (i + k < end) {
                    int j = base + i + k;
                    to.chance[j] += c * share;
                    to.mean[j] += m * share;
                    to.square[j] += q * share;
                } else {
                    collect(block, share, c, m, q);
                }
            }
        }
        to.low[block] = Math.min(to.low[block], low);
        to.high[block] = Math.max(to.high[block], Math.min(high + REACH - 1, end - 1));
    }

    private void collect(int cell, double share, double c, double m, double q) {
        pool[0][cell] += share * c;
        pool[1][cell] += share * m;
        pool[2][cell] += share * q;
    }

    private void leave(Belief to) {
        for (int f = 0; f < bins.figures; f++) {
            double leaving = 0;
            for (int lane = 0; lane < Lanes.COUNT; lane++) {
                leaving += pool[0][lane * bins.figures + f];
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
                    enter(to, lane * bins.figures + f, lane, g, w, g == f + 1);
                }
            }
        }
    }

    private void enter(Belief to, int cell, int lane, int g, double w, boolean planned) {
        double c = pool[0][cell] * w;
        if (c == 0) {
            return;
        }
        double m = pool[1][cell] * w;
        double q = pool[2][cell] * w + c * NEXT_M2;
        if (!planned) {
            m *= 0.5;
            q = c * ANYWHERE_M2;
        }
        double same = planned ? 0.985 : 0.5;
        for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
            double s = Lanes.next(lane % Lanes.TEMPOS, tempo);
            int direction = Lanes.direction(lane);
            double a = s * same;
            double b = s * (1 - same);
            to.add(Lanes.of(direction, tempo), bins.first[g], c * a, m * a, q * a);
            to.add(Lanes.of(1 - direction, tempo), bins.first[g], c * b, m * b, q * b);
        }
    }

    private void specials(Belief from, Belief to) {
        double begins = from.before * BEGINS_PER_S * STEP_S;
        to.before += from.before - begins;
        start(to, 0, begins * 0.97);
        to.off += begins * 0.03;
        double back = from.off * BACK_PER_S * STEP_S;
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
            start(to, g, w * (1 - WITHIN));
            int places = (bins.length(g) - 1) / WITHIN_EVERY;
            for (int k = 1; k <= places; k++) {
                anyLane(to, bins.first[g] + k * WITHIN_EVERY, w * WITHIN / places);
            }
        }
    }

    private void start(Belief to, int g, double w) {
        anyLane(to, bins.first[g], w);
    }

    /** Puts a chance where nothing is known of direction, tempo and height. */
    static void anyLane(Belief to, int bin, double w) {
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            to.put(lane, bin, w * 0.5 * Lanes.share(lane % Lanes.TEMPOS), 0, ANYWHERE_M2);
        }
    }
}
