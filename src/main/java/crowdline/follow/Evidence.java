package crowdline.follow;

/**
 * What a reading says of every hidden state, against how well it fits any flight at all. What is predicted is weighed by
 * {@link Fit}; here is what is only timed, and what is outside the plan. The whole is raised to a power below one, because
 * what is off now is off in a moment too and readings are not news each time. All widths are tuned.
 */
final class Evidence {
    /** Time after which a reading is news, seconds. */
    private static final double NEWS_S = 2;

    /** How well a state fits of which little is predicted: what is common among those that are right. Tuned. */
    private static final double TIMED_FIT = 3e3;

    private static final double TIMED_CLIMB_MPS = 6;
    /** What is left of that in a climb or a dive that is not gentle at all. */
    private static final double WILD = 0.003;

    private static final double OFF_FIT = 160;
    /** Gentle flight off the plan against gentle flight in a timed figure. Tuned: the plan has to be the likelier. */
    private static final double OFF_GENTLY = 0.25;
    /** How far off its height a timed figure may be, metres. Tuned. */
    private static final double TIMED_HEIGHT_M = 120;

    private static final double TIMED_HEIGHT_FLOOR = 0.3;

    /** How near its place the way in to the first figure is flown, metres. Tuned. */
    private static final double LEAD_M = 80;

    private static final double LEAD_FLOOR = 0.1;

    /** How near its place and height an act begins, metres, and what is left of the chance far away. Tuned. */
    private static final double START_M = 100;

    private static final double START_HEIGHT_M = 60;
    private static final double NOT_AT_START = 0.001;

    private static final double GROUND_MPS = 18;
    private static final double GROUND_CLIMB_MPS = 10;
    private static final double GROUND_HEIGHT_M = 40;

    private final Bins bins;
    private final Fit fit;
    private final double lowestM;
    private final boolean startsOnGround;

    Evidence(Bins bins) {
        this.bins = bins;
        fit = new Fit(bins);
        lowestM = lowestM(bins);
        startsOnGround = startsOnGround(bins);
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

    /** How near a reading is to where an act that begins in the air begins, 1 there and where it begins on the ground. */
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
        double power = Math.min(1, seen.newS() / NEWS_S);
        double gentle = gentle(seen, power);
        weighSpecials(belief, seen, power, gentle);
        for (int f = 0; f < bins.figures; f++) {
            weigh(belief, f, 0, seen, power, gentle);
            weigh(belief, f, 1, seen, power, gentle);
        }
    }

    /** What tempos have in common is worked out once. */
    private void weigh(Belief belief, int f, int direction, Seen seen, double power, double gentle) {
        int low = Integer.MAX_VALUE;
        int high = -1;
        for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
            int block = Lanes.of(direction, tempo) * bins.figures + f;
            low = Math.min(low, belief.low[block]);
            high = Math.max(high, belief.high[block]);
        }
        double sign = direction == 0 ? 1 : -1;
        for (int bin = low; bin <= high; bin++) {
            boolean looked = false;
            for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
                int state = belief.state(Lanes.of(direction, tempo), bin);
                if (belief.chance[state] == 0) {
                    continue;
                }
                if (bins.timed[bin]) {
                    belief.scale(state, true, gentle * Math.pow(timed(bin, sign, seen), power));
                    continue;
                }
                if (!looked) {
                    fit.look(bin, sign, seen, power);
                    looked = true;
                }
                fit.weigh(belief, state);
            }
        }
    }

    /** Of what is only timed, how well height and the way in to the next figure fit, 1 at best. */
    private double timed(int bin, double sign, Seen seen) {
        double fit = near((seen.heightM() - bins.zM[bin]) / TIMED_HEIGHT_M, TIMED_HEIGHT_FLOOR);
        return bins.isLead(bin) ? fit * near((sign * seen.alongM() - bins.xM[bin]) / LEAD_M, LEAD_FLOOR) : fit;
    }

    private static double near(double sigmas, double floor) {
        double u = 1 + sigmas * sigmas / 3;
        return floor + (1 - floor) / (u * u);
    }

    /** The fit of what is only timed, such as a take-off: any gentle flight. */
    private static double gentle(Seen seen, double power) {
        double u = 1;
        if (seen.hasClimb()) {
            double e = seen.climbMps() / TIMED_CLIMB_MPS;
            u = 1 + e * e / 3;
        }
        return Math.pow(TIMED_FIT * (WILD + (1 - WILD) / (u * u)), power);
    }

    private void weighSpecials(Belief belief, Seen seen, double power, double gentle) {
        belief.off *= Math.pow(OFF_FIT, power);
        belief.offGently *= gentle * Math.pow(OFF_GENTLY, power);
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
        belief.before *= startsOnGround ? grounded : Math.pow(TIMED_FIT, power);
    }
}
