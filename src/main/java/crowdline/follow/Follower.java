package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.List;
import java.util.Objects;

/**
 * Follows one flight of an act. It has no clock: give it everything in the order of time. All times are on one scale, that
 * of the readings. Not thread-safe.
 */
public final class Follower {
    /**
     * Chance, 0 to 1: a figure in a lane that is less likely is forgotten. Tuned: 1e-6 to 1e-4 works. More saves time
     * and forgets what turns out true.
     */
    private static final double LEAST_FIGURE = 1e-5;
    /**
     * Chance, 0 to 1: a state that is less likely is forgotten. Tuned: 2e-7 to 2e-6 works, 2e-5 costs 3 % where a
     * figure is dropped. More saves time.
     */
    private static final double LEAST_STATE = 2e-6;
    /**
     * Share of the likeliest state in the same figure and lane; one below it is forgotten. Tuned: 0.005 to 0.08 works.
     * More saves time.
     */
    private static final double LEAST_SHARE = 2e-2;
    /** Seconds: no more than this is caught up with after a silence. Longer than any act; more would only take time. */
    private static final double LONGEST_S = 1800;
    /** Seconds: mean delay with which a hand steps after a figure has begun. Readings soon correct it. */
    private static final double HAND_LATE_S = 0.6;

    /** Seconds: with a reading no older than this, the aircraft counts as watched. Tuned: 0.7 to 4 works. */
    private static final double WATCHED_S = 1.5;

    /** Bins: a hand steps no later than this after the figure has begun; four times the mean delay. */
    private static final int HAND_BINS = 12;

    /** Chance, 0 to 1, of a figure's second half from which the act has begun for good. */
    private static final double BEGUN_FROM = 0.9;

    /** Metres a second over the ground: what is slower stands, for all that noise can feign. */
    private static final double STANDS_MPS = 3;
    /** Share by which an aircraft may be faster or slower than predicted and the figure still be sure. */
    private static final double UNLIKELY_SHARE = 0.25;

    /** Chance, 0 to 1, that the act has begun before anything is heard of it. */
    private static final double BEGUN_UNHEARD = 0.02;

    private static final int NONE = -1;

    private final FollowPlan plan;
    private final ReadingCheck readings;
    private final Evidence evidence;
    private final Order order;
    private final Motion motion;
    private final Lookout lookout;
    private final Doubt doubt;
    private final boolean heardLate;
    private Belief belief;
    private Belief spare;
    private double firstS = Double.NaN;
    private long steps;
    private int held = NONE;
    /** Whether the aircraft is not where it stands before the act: in the air it may have begun unheard, and on the ground it moves. */
    private boolean mayHaveBegun;

    /** A follower of an act that begins while it is watched; it does not know yet whether it has. */
    public Follower(FollowPlan plan) {
        this(plan, false);
    }

    /** A follower of an act that may have begun before anything is heard of the aircraft, as in a log that begins late. */
    public static Follower heardLate(FollowPlan plan) {
        return new Follower(plan, true);
    }

    private Follower(FollowPlan plan, boolean heardLate) {
        this.plan = plan;
        this.heardLate = heardLate;
        readings = new ReadingCheck(plan.fastestMps);
        evidence = new Evidence(plan.bins);
        order = new Order(plan.bins);
        doubt = new Doubt(order);
        motion = new Motion(plan.bins, plan.rate, plan.variance, order);
        lookout = new Lookout(plan.bins, evidence.fit(), order);
        belief = new Belief(plan.bins);
        spare = new Belief(plan.bins);
        belief.before = heardLate ? 1 - BEGUN_UNHEARD : 1;
        OutsidePlan.goOff(belief, 1 - belief.before);
        if (heardLate) {
            evidence.isHeardLate();
            motion.isHeardLate();
            order.isHeardLate();
        }
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
            boolean moves = seen.hasSpeeds() && seen.groundMps() > STANDS_MPS;
            mayHaveBegun = plan.startsOnGround() ? moves : heardLate;
            evidence.weigh(belief, seen);
            motion.isAtStart(evidence.atStart(seen));
            settle(r.tS());
            lookout.look(belief, seen, r.tS(), belief.total);
            for (int f = 0; f < plan.size(); f++) {
                if (belief.in(f) > 0.5 && evidence.isLoose(f)) {
                    doubt.looksLike(f, r.tS());
                }
            }
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
        belief.clear();
        int bins = Math.min(HAND_BINS, plan.bins.length(figureIndex));
        for (int k = 0; k < bins; k++) {
            double late = Math.exp(-k * Bins.WIDTH_S / HAND_LATE_S);
            belief.addInAnyLane(plan.bins.first[figureIndex] + k, OffsetDrift.anywhere(late), 1);
        }
        order.begins(figureIndex);
        lookout.clear();
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
            if (late > BEGUN_FROM && !plan.isTimedOnly(f)) {
                belief.before = 0;
            }
            if (belief.in(f) > 0.5) {
                doubt.sees(f, tS);
                if (Math.abs(belief.mean(f, Moments.FASTER)) > UNLIKELY_SHARE) {
                    doubt.looksLike(f, tS);
                }
            }
        }
        if (belief.unplanned() > 0.5) {
            doubt.sees(NONE, tS);
        }
    }

    private FollowNow now(double tS) {
        double silentS = tS - readings.lastGoodS();
        boolean silent = readings.lastAnyS() > Double.NEGATIVE_INFINITY && silentS > Answer.SILENT_S;
        return new Answer(plan, belief, doubt).at(tS, silent, silentS, mayHaveBegun);
    }
}
