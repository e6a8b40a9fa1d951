package crowdline.follow;

import java.util.Arrays;

/**
 * What a reading says of every hidden state: how much better it fits the state than it fits any flight at all. {@link Fit}
 * derives that ratio for states whose path is predicted, and says why a reading counts as only a part of one. Here are the
 * states without a predicted path. For those the ratio is a number that was tuned, to stand among the ratios that the right
 * states of the plan reach: raise it, and such a state is believed more often, rightly and wrongly.
 */
final class Evidence {
    /**
     * Seconds after which a reading counts as a whole one. Tuned: 2 to 4 works, 1 costs 5 % where a figure is dropped.
     * Less is sooner sure and more often wrong.
     */
    private static final double NEWS_S = 2;

    /**
     * Ratio: a figure that is only timed, such as a take-off, in gentle flight. Tuned: a third costs 0.8 % where the
     * flight is broken off, three times costs 4 % with an extra reposition.
     */
    private static final double TIMED_FIT = 3e3;

    /** Metres a second: climb of gentle flight. Tuned: 3 and 12 cost 1 % where something unknown is flown. */
    private static final double TIMED_CLIMB_MPS = 6;
    /** Share of the speed at its end at which a take-off may climb. */
    private static final double CLIMB_OUT_SHARE = 0.2;
    /** Share of the speed at its start at which a landing may sink. */
    private static final double SINK_SHARE = 0.1;
    /** How hard who waits for the act turns, in g: 65° of bank. Judgement. */
    private static final double WAITING_G = 2.2;
    /** Share of the mean speed of the act's figures at which he climbs or sinks. Judgement. */
    private static final double WAITING_CLIMB = 0.3;

    private static final double WAITING_CLIMB_MORE = 0.03;
    /** Factor on that he waits in harder flight than this. */
    private static final double WAITING_FLOOR = 0.01;
    /** Factor on that ratio in flight that is not gentle at all. Tuned: 0.001 to 0.01 works. */
    private static final double WILD = 0.003;

    /** Ratio: flight off the plan. Tuned: 160 to 500 works, 50 costs 3 % where something unknown is flown. */
    private static final double OFF_FIT = 160;
    /**
     * Factor, under 1: gentle flight off the plan against a timed figure, which has to be the likelier. Tuned: 0.5 costs 6 %
     * everywhere, 0.125 costs 2 % with an extra reposition.
     */
    private static final double OFF_GENTLY = 0.25;
    /** Metres: how far off its height a timed figure is flown. Tuned: 120 to 240 works, 60 costs 1.3 %, 4 % at worst. */
    private static final double TIMED_HEIGHT_M = 120;

    /** Factor on its ratio where the height does not fit at all. Tuned: 0.1 to 0.6 works. */
    private static final double TIMED_HEIGHT_FLOOR = 0.3;
    /** Factor on the speed a timed figure ends at: how fast it is flown for most of its time. */
    private static final double CIRCUIT_SPEED = 1.8;
    /** Seconds in which what is faster slows down to that. */
    private static final double SLOWING_S = 15;
    /** Share of that speed by which it may be flown faster. */
    private static final double TIMED_SPEED_SHARE = 0.2;
    /** Factor on its ratio at a speed that does not fit at all. */
    private static final double TIMED_SPEED_FLOOR = 0.03;
    /**
     * How steep a turn a timed figure has, as the pull to a side in g: 50° of bank. Circuits are flown at 30° or so and displays
     * at 60°: common practice, no source.
     */
    private static final double STEEP_G = 1.2;
    /** How much steeper it may yet be, g. */
    private static final double STEEPER_G = 0.3;
    /** Factor on its ratio in a turn that is far steeper, so that it is no likelier there than flight off the plan. */
    private static final double STEEP_FLOOR = OFF_GENTLY;
    /** Share of the mean speed of the act's figures under which an aircraft is slow. Tuned: 0.58 to 0.75 works. */
    private static final double SLOW_SHARE = 0.65;
    /** Share within which that is in doubt. */
    private static final double SLOWER_SHARE = 0.07;
    /**
     * How much more a landing fits in slow and steady flight. Tuned: 10 to 40 work; more finds a landing sooner, and takes a
     * glider's slow pass for one.
     */
    private static final double SLOW_AND_STEADY = 10;
    /** A landing that is as much likelier for gentle flight is not sure. */
    private static final double GENTLY = 2;
    /** Metres: how far off its place the way in to the first figure is flown. */
    private static final double LEAD_M = 80;

    /** Factor on its ratio where the place does not fit at all. */
    private static final double LEAD_FLOOR = 0.1;
    /** Metres: how far off its place an act begins. */
    private static final double START_M = 100;

    /** Metres: the same of the height. */
    private static final double START_HEIGHT_M = 60;
    /** Factor on the chance that the act begins, far from its place. */
    private static final double NOT_AT_START = 0.001;
    /** Metres a second, over the ground: slower than any flight, faster than most taxiing. */
    private static final double GROUND_MPS = 18;
    /** Metres a second, up or down, that noise in the height can feign. */
    private static final double GROUND_CLIMB_MPS = 10;
    /** Metres above the lowest place planned that noise in the height can feign. */
    private static final double GROUND_HEIGHT_M = 40;

    private final Bins bins;
    private final Fit fit;
    private final PlannedEfforts efforts;
    /** How much likelier by the last reading a landing is for how gently it was flown of late. */
    private double gently = 1;

    private final double lowestM;
    private final boolean startsOnGround;
    private boolean heardLate;
    /** Of each figure, how much more of its chance the last reading gave it for its path than for flying at all. */
    private final double[] byPath;

    Evidence(Bins bins) {
        this.bins = bins;
        fit = new Fit(bins);
        efforts = new PlannedEfforts(bins, fit.usualMps());
        byPath = new double[bins.figures];
        lowestM = lowestM(bins);
        startsOnGround = startsOnGround(bins);
    }

    /** How well paths fit, for who looks at them himself. */
    Fit fit() {
        return fit;
    }

    private static double lowestM(Bins bins) {
        double lowest = 0;
        for (double z : bins.zM) {
            lowest = Math.min(lowest, z);
        }
        return lowest;
    }

    /** True if the act begins with a take-off. */
    static boolean startsOnGround(Bins bins) {
        return bins.zM[0] < lowestM(bins) + GROUND_HEIGHT_M && bins.timed[0];
    }

    /** The act may have begun before it was heard of, so that figures in the air speak against waiting for it. */
    void isHeardLate() {
        heardLate = true;
    }

    /** How near a reading is to where the act begins: 1 there, towards 0 far away; 1 anywhere if it begins on the ground. */
    double atStart(Seen seen) {
        if (startsOnGround) {
            return 1;
        }
        double along = Math.abs(seen.alongM()) - Math.abs(bins.xM[0]);
        return near(along / START_M, NOT_AT_START)
                * near((seen.awayM() - bins.yM[0]) / START_M, NOT_AT_START)
                * near((seen.heightM() - bins.zM[0]) / START_HEIGHT_M, NOT_AT_START);
    }

    /** Weighs every state by a reading. */
    void weigh(Belief belief, Seen seen) {
        double power = power(seen.newS());
        Effort effort = seen.effort();
        gently = effort == null || seen.groundMps() < GROUND_MPS ? 1 : efforts.landsRatherThan(effort);
        weighSpecials(belief, seen, power);
        Arrays.fill(byPath, 0);
        for (int f = 0; f < bins.figures; f++) {
            weigh(belief, f, 0, seen, power);
            weigh(belief, f, 1, seen, power);
        }
    }

    /** How much of a whole reading one counts as that comes so long after the last, 0 to 1. */
    static double power(double sinceS) {
        return Math.min(1, sinceS / NEWS_S);
    }

    /** Whether by the last reading a figure was believed in for its speed and height alone and not for its path. */
    boolean isLoose(int f) {
        return byPath[f] < 0;
    }

    /** Weighs one direction of a figure; what its tempos have in common is worked out once. */
    private void weigh(Belief belief, int f, int direction, Seen seen, double power) {
        int low = Integer.MAX_VALUE;
        int high = -1;
        for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
            int block = Lanes.of(direction, tempo) * bins.figures + f;
            low = Math.min(low, belief.low[block]);
            high = Math.max(high, belief.high[block]);
        }
        double sign = direction == 0 ? 1 : -1;
        double gentle = low <= high && bins.timed[bins.first[f]] ? timedClimb(f, seen) : 1;
        for (int bin = low; bin <= high; bin++) {
            boolean looked = false;
            double fits = 0;
            for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
                int state = belief.state(Lanes.of(direction, tempo), bin);
                if (belief.chance[state] == 0) {
                    continue;
                }
                if (bins.timed[bin]) {
                    fits = looked ? fits : Math.pow(gentle * timed(bin, sign, seen), power);
                    looked = true;
                    belief.scale(state, true, fits);
                    if (bin >= bins.leadFrom[f] - 1 || isGentleLanding(f)) {
                        byPath[f] -= belief.chance[state];
                    }
                    continue;
                }
                if (!looked) {
                    fit.look(bin, sign, seen, power);
                    Way way = bins.way(bin);
                    if (way != null) {
                        fit.onAnyPath(way, bins.isLead(bin));
                    }
                    looked = true;
                }
                boolean byItsPath = fit.weigh(belief, state, seen);
                byPath[f] += (byItsPath ? 1 : -1) * belief.chance[state];
            }
        }
    }

    /** How well the height of a timed figure fits, and the place on its way in to the next; 1 at best. */
    private double timed(int bin, double sign, Seen seen) {
        double fit = near((seen.heightM() - bins.zM[bin]) / TIMED_HEIGHT_M, TIMED_HEIGHT_FLOOR);
        fit *= speed(bin, seen);
        if (seen.sidewaysG() > STEEP_G) {
            fit *= near((seen.sidewaysG() - STEEP_G) / STEEPER_G, STEEP_FLOOR);
        }
        return bins.isLead(bin) ? fit * near((sign * seen.alongM() - bins.xM[bin]) / LEAD_M, LEAD_FLOOR) : fit;
    }

    /**
     * How well the speed fits a timed figure, 1 at best: whatever it was before, it soon is not much more than that at the
     * figure's end. One that is planned to end at rest says nothing of the speed on the way.
     */
    private double speed(int bin, Seen seen) {
        int f = bins.figure[bin];
        if (!seen.hasSpeeds() || bins.endMps[f] < GROUND_MPS) {
            return 1;
        }
        double goneS = (bin - bins.first[f]) * Bins.WIDTH_S;
        double settled = CIRCUIT_SPEED * bins.endMps[f];
        double fast = settled + Math.max(0, bins.startMps[f] - settled) * Math.exp(-goneS / SLOWING_S);
        double over = seen.groundMps() - fast;
        return over <= 0 ? 1 : near(over / (TIMED_SPEED_SHARE * fast), TIMED_SPEED_FLOOR);
    }

    /** A factor that falls off with how many standard deviations something is off, from 1 to this floor. */
    static double near(double sigmas, double floor) {
        double u = 1 + sigmas * sigmas / 3;
        return floor + (1 - floor) / (u * u);
    }

    /** The ratio of a timed figure in its climb: a take-off may climb as well, and a landing sink. */
    private double timedClimb(int f, Seen seen) {
        if (!seen.hasClimb()) {
            return TIMED_FIT;
        }
        double rises = bins.zM[bins.first[f + 1] - 1] - bins.zM[bins.first[f]];
        double climb = f == 0 && rises > 0 ? CLIMB_OUT_SHARE * bins.endMps[f] : 0;
        double sink = f == bins.figures - 1 && rises < 0 ? SINK_SHARE * bins.startMps[f] : 0;
        double off = Way.outside(seen.climbMps(), -sink, climb) / TIMED_CLIMB_MPS;
        return TIMED_FIT * near(off, WILD) * (f == 0 ? 1 : asLanding(f, seen));
    }

    private double asLanding(int f, Seen seen) {
        return isLanding(f) ? Math.max(gently, slowAndSteady(seen)) : slowAndSteady(seen);
    }

    private boolean isLanding(int f) {
        return f == bins.figures - 1 && bins.lands();
    }

    /** Whether it is a landing that is likely for how gently it is flown; a slow pass would be too. */
    private boolean isGentleLanding(int f) {
        return gently > GENTLY && isLanding(f);
    }

    /**
     * How much likelier a landing is for being flown slowly, straight and evenly: it has few speeds to choose from, and
     * nothing else is flown like that for long. Without it a line that is once believed to be flown at half its speed fits
     * ten times as well as a landing, for as long as it takes to the ground.
     */
    private double slowAndSteady(Seen seen) {
        if (!seen.hasSpeeds() || seen.groundMps() < GROUND_MPS) {
            return 1;
        }
        double over = (seen.groundMps() / fit.usualMps() - SLOW_SHARE) / SLOWER_SHARE;
        return 1 + SLOW_AND_STEADY * seen.steady() / (1 + Math.exp(over));
    }

    /** The ratio of gentle flight off the plan, to the power. */
    private static double gentle(Seen seen, double power) {
        double u = 1;
        if (seen.hasClimb()) {
            double e = seen.climbMps() / TIMED_CLIMB_MPS;
            u = 1 + e * e / 3;
        }
        return Math.pow(TIMED_FIT * (WILD + (1 - WILD) / (u * u)), power);
    }

    /** How well it fits an aircraft that waits for its act, 1 at best: it may dive to its entry, and flies no figures. */
    private double waits(Seen seen) {
        Effort effort = seen.effort();
        if (!heardLate || effort == null) {
            return 1;
        }
        double over = Math.max(
                (effort.bentG() - WAITING_G) / STEEPER_G,
                (effort.climbMps() / fit.usualMps() - WAITING_CLIMB) / WAITING_CLIMB_MORE);
        return WAITING_FLOOR + (1 - WAITING_FLOOR) / (1 + Math.exp(over));
    }

    private void weighSpecials(Belief belief, Seen seen, double power) {
        belief.off *= Math.pow(OFF_FIT, power);
        // An act without a landing may be broken off to one all the same, and then that is in no plan; who waits for it
        // flies so too.
        double home = bins.lands() ? 1 : Math.max(gently, slowAndSteady(seen));
        belief.offGently *= gentle(seen, power) * Math.pow(OFF_GENTLY * home, power);
        if (!seen.hasSpeeds()) {
            belief.before *= Math.pow(TIMED_FIT, power);
            belief.after *= Math.pow(OFF_FIT, power);
            return;
        }
        boolean ground = seen.groundMps() < GROUND_MPS
                && !(Math.abs(seen.climbMps()) > GROUND_CLIMB_MPS)
                && seen.heightM() < lowestM + GROUND_HEIGHT_M;
        double grounded = Math.pow(ground ? 5 * TIMED_FIT : 0.1 * OFF_FIT, power);
        belief.after *= grounded;
        belief.before *= startsOnGround ? grounded : Math.pow(TIMED_FIT * home * waits(seen), power);
    }
}
