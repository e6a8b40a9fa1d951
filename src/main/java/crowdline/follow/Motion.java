package crowdline.follow;

import java.util.Arrays;

/** How the hidden state moves by itself in one step of time: the clock of the filter. */
final class Motion {
    /** Seconds in a step. */
    static final double STEP_S = 0.1;

    /**
     * Chance a second that a figure is broken off, about once in eight minutes. Tuned: a quarter works, four times
     * costs 0.6 %. More finds what is not in the plan sooner, and finds it where it is not.
     */
    private static final double BROKEN_OFF_PER_S = 1 / 500.0;

    static final double OFF = BROKEN_OFF_PER_S * STEP_S;

    /**
     * Chance a second that a timed figure after the first, such as a landing, turns out to be something else. More
     * leaves a real landing too soon.
     */
    private static final double TIMED_OFF_PER_S = 0.1;
    /**
     * Ends a second of a line to a place or a height, once the aircraft is there. Tuned: 2 to 8 works. Less is late,
     * more trusts the place too much.
     */
    private static final double ENDS_PER_S = 4;
    /**
     * Seconds before the place at which the aircraft counts as there: a bend shows only after it has begun. Tuned: 0.1
     * to 0.6 works. More is early.
     */
    private static final double ENDS_BEFORE_S = 0.3;
    /** Chance a second that a timed figure comes to its end early. More takes gentle flight for its end. */
    private static final double TIMED_EARLY_PER_S = 0.02;
    /**
     * Ends a second of a figure that is only timed, or of a way, once its time is up but for its last part. Tuned: 0.15 and
     * 0.6 work. Less is late, more is early.
     */
    private static final double WAIT_ENDS_PER_S = 0.3;
    /** Share of these that are at the last part; the others are at the next figure. Tuned: 0.4 to 0.7 works, 1 costs 5 %. */
    private static final double BY_ITS_END = 0.7;
    /**
     * The same of a take-off, whose end is flown straight in. Where a way follows it is all of them: what comes before a way
     * fits it as well.
     */
    private static final double TIMED_BY_ITS_END = 0.9;
    /** Chance a second that it turns out to be something else. */
    private static final double WAIT_OFF_PER_S = 0.02;
    /** Ends a second of a landing whose time is up: as long as it is watched, it ends when the aircraft stands. */
    private static final double LANDED_PER_S = 0.1;
    /**
     * Chance a second that an aircraft going straight down comes out of it the other way than planned; then all that follows is
     * flown the other way.
     */
    private static final double TURNED_PER_S = 0.02;
    /** Ends a second of a line to a speed, once its time is up. */
    private static final double FAST_ENOUGH_PER_S = 1.5;
    /** Seconds by which it may well be shorter than planned. */
    private static final double EARLY_S = 1;
    /** Metres: how near a pilot comes to such a place. Tuned: 5 to 45 works. Less is sure of the place too soon. */
    private static final double NEAR_PLACE_M = 15.6;
    /** Metres: how near to such a height. */
    private static final double NEAR_HEIGHT_M = 9.6;
    /**
     * Share of lines that end at another place or height than planned: by an altimeter set otherwise, or because the pilot
     * thinks better of it.
     */
    private static final double OTHER_PLACE = 0.1;
    /** Metres: how far off. */
    private static final double OTHER_PLACE_M = 60;
    /** Chance, 0 to 1, below which what leaves a figure in one step is forgotten, to save time. */
    static final double LEAST_POOL = 5e-7;

    private final Bins bins;
    private final PhaseGain gain;
    private final Order order;
    private final double[] row;
    /** What leaves each figure in the step, by direction. */
    private final Moments[] pool;

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
        pool = new Moments[2 * bins.figures];
        Arrays.setAll(pool, i -> new Moments());
        gain = new PhaseGain(bins, rate, variance);
        drift = new OffsetDrift(bins);
        outside = new OutsidePlan(bins, order);
    }

    /**
     * One step of time; {@code to} is overwritten. A held figure is neither broken off nor cut short.
     *
     * @param watched whether readings come in; they show whether a timed figure, or a way, has ended
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

    /** See {@link OutsidePlan#isHeardLate}. */
    void isHeardLate() {
        outside.isHeardLate();
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
            double faster = bins.elastic[i] ? here.mean(Moments.FASTER) : 0;
            double keep = 1;
            if (!held) {
                double off = bins.timed[i] && f > 0 ? TIMED_OFF_PER_S * STEP_S : OFF;
                OutsidePlan.goOff(to, here.chance * off);
                keep -= off;
            }
            if (watched && bins.mayEndEarly(i)) {
                double early = TIMED_EARLY_PER_S * STEP_S;
                end(to, lane, f, early);
                keep -= early;
            }
            if (bins.falls[i]) {
                double turns = keep * TURNED_PER_S * STEP_S;
                there.turned(here, bins.xM[i]);
                to.add(Lanes.turned(lane), i, there, turns);
                keep -= turns;
            }
            int lineEnd = bins.lineEnd[i];
            if (lineEnd > 0) {
                keep -= endLine(to, lane, i, keep);
            }
            boolean waits = watched && bins.mayEndEarly(i);
            if (waits && i == bins.leadFrom[f] - 1) {
                keep -= endWait(to, lane, f, keep);
            }
            int last = bins.first[f + 1] - 1;
            boolean lands = watched && f == bins.figures - 1 && bins.lands();
            if (lands && i == last) {
                double ends = keep * LANDED_PER_S * STEP_S;
                put(to, lane, f, i + 1, here, ends);
                keep -= ends;
            }
            double[] p = gain.of(lane, i);
            for (int k = 0; k < PhaseGain.REACH; k++) {
                if (p[k] == 0) {
                    continue;
                }
                int most = lineEnd > 0 ? lineEnd - 1 - i : lands ? last - i : k;
                int won = Math.min(k, waits ? Math.min(most, bins.leadFrom[f] - 1 - i) : most);
                if (bins.elastic[i]) {
                    // The aircraft flies on as it does, however much of the line is thought to be behind it.
                    double stretchS = (1 + faster) * STEP_S - won * Bins.WIDTH_S;
                    there.moved(here, stretchS * bins.vxMps[i], stretchS * bins.vzMps[i]);
                    put(to, lane, f, i + won, there, keep * p[k]);
                } else {
                    put(to, lane, f, i + won, here, keep * p[k]);
                }
            }
        }
    }

    /**
     * A figure of no known path, or a way, takes as long as it takes, as long as it is watched.
     *
     * @return the share that leaves it
     */
    private double endWait(Belief to, int lane, int f, double keep) {
        double ends = keep * WAIT_ENDS_PER_S * STEP_S;
        double off = keep * WAIT_OFF_PER_S * STEP_S;
        end(to, lane, f, ends);
        OutsidePlan.goOff(to, here.chance * off);
        return ends + off;
    }

    /** A share comes to the last part of its figure, or is at the next one already. */
    private void end(Belief to, int lane, int f, double share) {
        boolean wayNext = f + 1 < bins.figures && bins.isWay(f + 1);
        double byItsEnd = !bins.timed[bins.first[f]] ? BY_ITS_END : wayNext ? 1 : TIMED_BY_ITS_END;
        to.add(lane, bins.leadFrom[f], here, share * byItsEnd);
        put(to, lane, f, bins.first[f + 1], here, share * (1 - byItsEnd));
    }

    /**
     * A line flown to a place or a height ends once the aircraft is there, wherever it was taken up.
     *
     * @return the share that leaves the line
     */
    private double endLine(Belief to, int lane, int i, double keep) {
        double leftS = (bins.lineEnd[i] - i - 0.5) * Bins.WIDTH_S;
        if (bins.toSpeed[i]) {
            double share = keep * STEP_S * FAST_ENOUGH_PER_S * reached(-leftS, EARLY_S * EARLY_S);
            there.moved(here, -leftS * bins.vxMps[i], -leftS * bins.vzMps[i]);
            put(to, lane, bins.figure[i], bins.lineEnd[i], there, share);
            return share;
        }
        boolean height = bins.toHeight[i];
        int offset = height ? Moments.HEIGHT : Moments.ALONG;
        double near = height ? NEAR_HEIGHT_M : NEAR_PLACE_M;
        double speed = height ? bins.vzMps[i] : bins.vxMps[i];
        double overM = Math.signum(speed) * ((height ? bins.zM[i] : bins.xM[i]) + here.mean(offset) - bins.goalM[i])
                + ENDS_BEFORE_S * Math.abs(speed);
        double told = reached(overM, here.variance(offset) + near * near);
        double reached = told + OTHER_PLACE * (reached(overM, OTHER_PLACE_M * OTHER_PLACE_M) - told);
        double share = keep * STEP_S * ENDS_PER_S * reached;
        there.moved(here, -leftS * bins.vxMps[i], -leftS * bins.vzMps[i]);
        put(to, lane, bins.figure[i], bins.lineEnd[i], there, share);
        return share;
    }

    /** Chance that a place known to this variance is reached by somebody so far past where it should be. */
    private static double reached(double overM, double varianceM2) {
        return 1 / (1 + Math.exp(-1.7 * overM / Math.sqrt(varianceM2)));
    }

    /** Puts a share in a bin, or among what leaves the figure if the bin is past its end. */
    private void put(Belief to, int lane, int f, int bin, Moments m, double share) {
        if (bin < bins.first[f + 1]) {
            to.add(lane, bin, m, share);
        } else {
            pool[Lanes.direction(lane) * bins.figures + f].add(m, share);
        }
    }

    private void leave(Belief to) {
        for (int f = 0; f < bins.figures; f++) {
            double leaving = pool[f].chance + pool[bins.figures + f].chance;
            if (leaving < LEAST_POOL) {
                continue;
            }
            order.after(f, row);
            OutsidePlan.goOff(to, leaving * row[bins.figures]);
            to.after += leaving * row[bins.figures + 1];
            for (int g = 0; g < bins.figures; g++) {
                if (row[g] * leaving < LEAST_POOL) {
                    continue;
                }
                if (g == f + 1) {
                    enterNext(to, g, row[g]);
                } else {
                    to.addInAnyLane(bins.first[g], anywhere, row[g] * leaving);
                }
            }
        }
    }

    /** The next figure of the plan begins where the last one ended, in the same direction and at any tempo. */
    private void enterNext(Belief to, int g, double share) {
        for (int direction = 0; direction < 2; direction++) {
            Moments leaving = pool[direction * bins.figures + g - 1];
            if (leaving.chance == 0) {
                continue;
            }
            here.set(leaving);
            OffsetDrift.next(here);
            for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
                int lane = Lanes.of(direction, tempo);
                to.add(lane, bins.first[g], here, 2 * share * Lanes.share(lane));
            }
        }
    }
}
