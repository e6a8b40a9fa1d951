package crowdline.follow;

import java.util.Arrays;

/** How the hidden state moves by itself in one step of time; the clock of the filter. */
final class Motion {
    /** One step, seconds. */
    static final double STEP_S = 0.1;

    /** A level line to the end of a figure may be cut short, per second. Tuned. */
    private static final double CUT_SHORT_PER_S = 0.002;
    /** A figure is broken off, per second. Tuned: about once in eight minutes if nothing is seen. */
    private static final double BROKEN_OFF_PER_S = 1 / 500.0;

    static final double OFF = BROKEN_OFF_PER_S * STEP_S;
    static final double CUT = CUT_SHORT_PER_S * STEP_S;

    /** What was taken for a landing turns out to be something else, per second. Tuned. */
    private static final double TIMED_OFF_PER_S = 0.1;
    /** A line to a place or a height ends so often a second once there, and before. Tuned. */
    private static final double ENDS_PER_S = 4;

    private static final double ENDS_EARLY_PER_S = 0.03;
    /** It counts as there so long before, for by the time the readings show that it ended it has. Tuned. */
    private static final double ENDS_BEFORE_S = 0.3;
    /** What is only timed may come to its end early, per second, once a third of it has gone. Tuned. */
    private static final double TIMED_EARLY_PER_S = 0.02;
    /** How near a pilot comes to such a place, and to such a height, metres. Tuned. */
    private static final double NEAR_PLACE_M = 15.6;

    private static final double NEAR_HEIGHT_M = 9.6;
    /** Chance that what follows as planned goes the way it is expected to. Tuned. */
    private static final double SAME_WAY = 0.95;

    static final double LEAST_POOL = 5e-7;

    private final Bins bins;
    private final PhaseGain gain;
    private final Order order;
    private final double[] row;
    private final Moments[] pool;
    /** What leaves a figure, by the tempo it goes on in. */
    private final double[] tempos = new double[Lanes.TEMPOS];

    private final Moments anywhere = OffsetDrift.anywhere(1);
    private final Moments here = new Moments();
    private final Moments there = new Moments();
    private final OffsetDrift drift;
    private final OutsidePlan outside;

    /**
     * @param rate of each figure, predicted seconds a second
     * @param variance of each figure, square seconds a second
     */
    Motion(Bins bins, double[] rate, double[] variance, Order order) {
        this.bins = bins;
        this.order = order;
        row = new double[bins.figures + 2];
        pool = new Moments[Lanes.COUNT * bins.figures];
        Arrays.setAll(pool, i -> new Moments());
        gain = new PhaseGain(bins, rate, variance);
        drift = new OffsetDrift(bins);
        outside = new OutsidePlan(bins, order);
    }

    /**
     * One step of time; {@code to} is overwritten. A held figure is neither broken off nor cut short.
     *
     * @param watched whether readings come in, which show at once if a figure that is only timed has not ended early
     */
    void step(Belief from, Belief to, int held, boolean watched) {
        to.clear();
        for (Moments part : pool) {
            part.clear();
        }
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            for (int f = 0; f < bins.figures; f++) {
                push(from, to, lane, f, f == held, watched);
            }
        }
        leave(to);
        outside.step(from, to);
    }

    /** See {@link OutsidePlan#isAtStart}. */
    void isAtStart(double near) {
        outside.isAtStart(near);
    }

    private void push(Belief from, Belief to, int lane, int f, boolean held, boolean watched) {
        int block = lane * bins.figures + f;
        int low = from.low[block];
        int high = from.high[block];
        if (low > high) {
            return;
        }
        for (int i = low; i <= high; i++) {
            int state = from.state(lane, i);
            if (from.chance[state] == 0) {
                continue;
            }
            here.set(from, state);
            drift.step(here, i);
            double keep = 1;
            if (!held) {
                double off = bins.timed[i] && f > 0 ? TIMED_OFF_PER_S * STEP_S : OFF;
                OutsidePlan.goOff(to, here.chance * off);
                keep -= off;
                if (bins.ending[i]) {
                    pool[block].add(here, CUT);
                    keep -= CUT;
                }
            }
            if (watched && bins.mayEndEarly(i)) {
                double early = TIMED_EARLY_PER_S * STEP_S;
                to.add(lane, bins.leadFrom[f], here, early);
                keep -= early;
            }
            int lineEnd = bins.lineEnd[i];
            if (lineEnd > 0) {
                keep -= endLine(to, lane, i, keep);
            }
            double[] p = gain.of(lane, i);
            for (int k = 0; k < PhaseGain.REACH; k++) {
                if (p[k] == 0) {
                    continue;
                }
                int won = lineEnd > 0 ? Math.min(k, lineEnd - 1 - i) : k;
                if (bins.elastic[i]) {
                    // The aircraft flies on as it does, however much of the line is thought to be behind it.
                    double stretchS = (gain.mean(lane, f) - won) * Bins.WIDTH_S;
                    there.moved(here, stretchS * bins.vxMps[i], stretchS * bins.vzMps[i]);
                    put(to, lane, f, i + won, there, keep * p[k]);
                } else {
                    put(to, lane, f, i + won, here, keep * p[k]);
                }
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
        int offset = height ? Moments.HEIGHT : Moments.ALONG;
        double near = height ? NEAR_HEIGHT_M : NEAR_PLACE_M;
        double speed = height ? bins.vzMps[i] : bins.vxMps[i];
        double leftS = (bins.lineEnd[i] - i - 0.5) * Bins.WIDTH_S;
        double overM = Math.signum(speed) * ((height ? bins.zM[i] : bins.xM[i]) + here.mean(offset) - bins.goalM[i])
                + ENDS_BEFORE_S * Math.abs(speed);
        double reached = 1 / (1 + Math.exp(-1.7 * overM / Math.sqrt(here.variance(offset) + near * near)));
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
            OutsidePlan.goOff(to, leaving * row[bins.figures]);
            to.after += leaving * row[bins.figures + 1];
            shareTempos(f);
            for (int g = 0; g < bins.figures; g++) {
                double w = row[g];
                if (w * leaving < LEAST_POOL) {
                    continue;
                }
                if (g == f + 1) {
                    enterNext(to, g, w);
                } else {
                    enterAnywhere(to, g, w);
                }
            }
        }
    }

    /** How much of what leaves a figure goes on in each tempo. */
    private void shareTempos(int f) {
        Arrays.fill(tempos, 0);
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
                tempos[tempo] += pool[lane * bins.figures + f].chance * Lanes.next(lane % Lanes.TEMPOS, tempo);
            }
        }
    }

    private void enterAnywhere(Belief to, int g, double w) {
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            to.add(lane, bins.first[g], anywhere, w * tempos[lane % Lanes.TEMPOS] / 2);
        }
    }

    private void enterNext(Belief to, int g, double w) {
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            Moments leaving = pool[lane * bins.figures + g - 1];
            if (leaving.chance == 0) {
                continue;
            }
            here.set(leaving);
            OffsetDrift.next(here);
            for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
                double s = w * Lanes.next(lane % Lanes.TEMPOS, tempo);
                int direction = Lanes.direction(lane);
                to.add(Lanes.of(direction, tempo), bins.first[g], here, s * SAME_WAY);
                to.add(Lanes.of(1 - direction, tempo), bins.first[g], here, s * (1 - SAME_WAY));
            }
        }
    }
}
