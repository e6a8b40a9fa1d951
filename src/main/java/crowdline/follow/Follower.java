package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.List;
import java.util.Objects;

/**
 * Follows one flight of an act. Give it everything in the order of time; it knows no clock. All times are on one scale,
 * that of the readings. Not for more than one thread.
 */
public final class Follower {
    /** Figures in a lane less likely than this are forgotten. Tuned. */
    private static final double LEAST_FIGURE = 1e-5;
    /** States less likely than this are forgotten. Tuned. */
    private static final double LEAST_STATE = 2e-6;
    /** States less likely than this share of the likeliest in their figure and lane are forgotten. Tuned. */
    private static final double LEAST_SHARE = 2e-2;
    /** After a longer silence than this, seconds, the filter starts from what it is told next. */
    private static final double LONGEST_S = 1800;
    /** A hand that steps does so at the start of the figure or a little after; mean delay, seconds. Tuned. */
    private static final double HAND_LATE_S = 0.6;

    /** Readings come in if one came within this, seconds. */
    private static final double WATCHED_S = 1.5;

    private static final int HAND_BINS = 12;
    private static final int NONE = -1;

    private final FollowPlan plan;
    private final ReadingCheck readings;
    private final Evidence evidence;
    private final Order order;
    private final Motion motion;
    private final Doubt doubt;
    private Belief belief;
    private Belief spare;
    private double firstS = Double.NaN;
    private long steps;
    private int held = NONE;

    /** A follower that does not know yet whether the act has begun. */
    public Follower(FollowPlan plan) {
        this.plan = plan;
        readings = new ReadingCheck(plan.fastestMps, plan.mostGainMps);
        evidence = new Evidence(plan.bins);
        order = new Order(plan.bins);
        doubt = new Doubt(order);
        motion = new Motion(plan.bins, plan.rate, plan.variance, order);
        belief = new Belief(plan.bins);
        spare = new Belief(plan.bins);
        belief.before = 1;
    }

    /** The first figure begins now, says somebody who knows. */
    public FollowNow start(double tS) {
        return hand(tS, 0);
    }

    /** The clock alone. */
    public FollowNow tick(double tS) {
        advance(tS);
        return now(tS);
    }

    /** A reading; one that cannot be believed counts as the clock alone. */
    public FollowNow reading(Reading r) {
        advance(r.tS());
        Seen seen = readings.take(r);
        if (seen != null) {
            evidence.weigh(belief, seen);
            motion.isAtStart(evidence.atStart(seen));
            settle(r.tS());
        }
        return now(r.tS());
    }

    /**
     * The order in which the figures are to be flown, says somebody who knows; until then it is the plan's.
     *
     * @param order figures from 0, each at most once; those left out are not to be flown
     * @throws IndexOutOfBoundsException if there is no such figure
     */
    public void told(List<Integer> order) {
        this.order.told(order);
    }

    /**
     * A step by hand: this figure begins now, or began a moment ago, whatever the readings say.
     *
     * @throws IndexOutOfBoundsException if there is no such figure
     */
    public FollowNow hand(double tS, int figureIndex) {
        Objects.checkIndex(figureIndex, plan.size());
        advance(tS);
        double left = belief.before + belief.unplanned() + belief.after;
        double[] lane = new double[Lanes.COUNT];
        for (int i = 0; i < Lanes.COUNT; i++) {
            lane[i] = left / Lanes.COUNT;
            for (int f = 0; f < plan.size(); f++) {
                lane[i] += belief.in(i, f);
            }
        }
        belief.clear();
        int bins = Math.min(HAND_BINS, plan.bins.length(figureIndex));
        for (int i = 0; i < Lanes.COUNT; i++) {
            double mirror = lane[i < Lanes.TEMPOS ? i + Lanes.TEMPOS : i - Lanes.TEMPOS];
            double share = 0.85 * lane[i] + 0.15 * mirror;
            for (int k = 0; k < bins; k++) {
                double late = Math.exp(-k * Bins.WIDTH_S / HAND_LATE_S);
                belief.add(i, plan.bins.first[figureIndex] + k, OffsetDrift.anywhere(share * late), 1);
            }
        }
        order.begins(figureIndex);
        doubt.told(figureIndex);
        held = figureIndex;
        settle(tS);
        return now(tS);
    }

    private void advance(double tS) {
        if (Double.isNaN(firstS)) {
            firstS = tS;
            return;
        }
        long wanted = Math.round((tS - firstS) / Motion.STEP_S);
        if (wanted - steps > LONGEST_S / Motion.STEP_S) {
            steps = wanted - (long) (LONGEST_S / Motion.STEP_S);
        }
        while (steps < wanted) {
            step();
        }
    }

    private void step() {
        boolean watched = firstS + steps * Motion.STEP_S - readings.lastGoodS() < WATCHED_S;
        motion.step(belief, spare, held, watched);
        Belief done = belief;
        belief = spare;
        spare = done;
        steps++;
        double nowS = firstS + steps * Motion.STEP_S;
        settle(nowS);
        if (held != NONE && belief.in(held) < 0.5) {
            held = NONE;
        }
    }

    private void settle(double tS) {
        if (!belief.settle(LEAST_FIGURE, LEAST_STATE, LEAST_SHARE)) {
            belief.clear();
            belief.off = 1;
        }
        for (int f = 0; f < plan.size(); f++) {
            double late = belief.late(f);
            if (late > 0.05) {
                order.saw(f, late);
            }
            if (belief.in(f) > 0.5) {
                doubt.sees(f, tS);
            }
        }
        if (belief.unplanned() > 0.5) {
            doubt.sees(NONE, tS);
        }
    }

    private FollowNow now(double tS) {
        double silentS = tS - readings.lastGoodS();
        boolean silent = readings.lastAnyS() > Double.NEGATIVE_INFINITY && silentS > Answer.SILENT_S;
        return new Answer(plan, belief, doubt).at(tS, silent, silentS);
    }
}
