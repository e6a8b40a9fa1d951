package crowdline.follow;

/**
 * How well a reading fits each hidden state, against how well it fits any flight at all. Every feature counts with a
 * Student density over a floor, so that no single one can rule a state out; the whole is raised to a power below one,
 * because what is off now is off in a moment too and readings are not news each time. All widths are tuned.
 */
final class Evidence {
    /** Time after which a reading is news, seconds. */
    private static final double NEWS_S = 2;

    private static final double FLOOR = 0.03;
    private static final double PLACE_FLOOR = 0.3;
    /** Where a flight can be at all: half widths of the broad density. */
    private static final double WIDE_ALONG_M = 250;

    private static final double WIDE_AWAY_M = 150;
    private static final double WIDE_HEIGHT_M = 200;
    private static final double WIDE_MPS = 35;
    private static final double WIDE_CLIMB_MPS = 25;

    /** Beyond what is believed of the offsets. */
    private static final double ALONG_M = 10;

    private static final double HEIGHT_M = 6;
    /** Of the place as planned, whatever the offsets. */
    private static final double PLANNED_ALONG_M = 200;

    private static final double AWAY_M = 60;
    private static final double SPEED_MPS = 3.5;
    private static final double CLIMB_MPS = 3.5;
    /** Share of the airspeed by which pilots differ. */
    private static final double SPEED_SHARE = 0.1;
    /** And where it only turns round, in as much room as its speed takes. */
    private static final double ROUND_SPEED_SHARE = 0.15;

    /** How far the phase may be off within a bin and between two, seconds. */
    private static final double SLACK_S = 0.25;

    /** How well a state fits of which little is predicted: what is common among those that are right. Tuned. */
    private static final double TIMED_FIT = 1e3;

    private static final double TIMED_CLIMB_MPS = 6;
    private static final double OFF_FIT = 80;
    /** Gentle flight off the plan against gentle flight in a timed figure. Tuned: the plan has to be the likelier. */
    private static final double OFF_GENTLY = 0.25;
    /** How far off its height a timed figure may be, metres. Tuned. */
    private static final double TIMED_HEIGHT_M = 120;

    private static final double TIMED_HEIGHT_FLOOR = 0.3;

    /** How near its place the way in to the first figure is flown, metres. Tuned. */
    private static final double LEAD_M = 80;

    private static final double LEAD_FLOOR = 0.1;

    private static final double GROUND_MPS = 18;
    private static final double GROUND_CLIMB_MPS = 3;
    private static final double GROUND_HEIGHT_M = 40;

    private final Bins bins;
    private final double lowestM;
    private final boolean startsOnGround;

    Evidence(Bins bins) {
        this.bins = bins;
        double lowest = Double.POSITIVE_INFINITY;
        for (double z : bins.zM) {
            lowest = Math.min(lowest, z);
        }
        lowestM = Math.min(lowest, 0);
        startsOnGround = bins.zM[0] < lowestM + GROUND_HEIGHT_M && bins.timed[0];
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
            double common = 0;
            for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
                int i = Lanes.of(direction, tempo) * bins.size + bin;
                if (belief.chance[i] == 0) {
                    continue;
                }
                if (bins.timed[bin]) {
                    belief.scale(i, gentle * Math.pow(timed(bin, sign, seen), power));
                    continue;
                }
                if (common == 0) {
                    common = place(bin, sign, seen) * speeds(bin, sign, seen);
                }
                weigh(belief, i, bin, sign, seen, power, common);
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
        return Math.pow(TIMED_FIT * (FLOOR + (1 - FLOOR) / (u * u)), power);
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

    private void weigh(Belief belief, int i, int bin, double sign, Seen seen, double power, double common) {
        double c = belief.chance[i];
        double x = belief.along[i] / c;
        double xv = Math.max(belief.along2[i] / c - x * x, 1);
        double z = belief.height[i] / c;
        double zv = Math.max(belief.height2[i] / c - z * z, 1);

        double xSlack = SLACK_S * bins.vxMps[bin];
        double xr = ALONG_M * ALONG_M + xSlack * xSlack;
        double xe = sign * seen.alongM() - bins.xM[bin] - x;
        double xu = 1 + xe * xe / (3 * (xv + xr));
        double zSlack = SLACK_S * bins.vzMps[bin];
        double zr = HEIGHT_M * HEIGHT_M + zSlack * zSlack;
        double ze = seen.heightM() - bins.zM[bin] - z;
        double zu = 1 + ze * ze / (3 * (zv + zr));
        double fit = common
                * ratio(xu, Math.sqrt(xv + xr), WIDE_ALONG_M, PLACE_FLOOR)
                * ratio(zu, Math.sqrt(zv + zr), WIDE_HEIGHT_M, PLACE_FLOOR);

        double after = Math.exp(power * Math.log(fit)) * c;
        double xGain = xv / (xv + xr / power) / xu;
        x += xGain * xe;
        xv *= 1 - xGain;
        double zGain = zv / (zv + zr / power) / zu;
        z += zGain * ze;
        zv *= 1 - zGain;
        belief.chance[i] = after;
        belief.along[i] = after * x;
        belief.along2[i] = after * (xv + x * x);
        belief.height[i] = after * z;
        belief.height2[i] = after * (zv + z * z);
    }

    private double place(int bin, double sign, Seen seen) {
        double ex = (sign * seen.alongM() - bins.xM[bin]) / PLANNED_ALONG_M;
        double ey = (seen.awayM() - bins.yM[bin]) / AWAY_M;
        return ratio(1 + ex * ex / 3, PLANNED_ALONG_M, WIDE_ALONG_M, PLACE_FLOOR)
                * ratio(1 + ey * ey / 3, AWAY_M, WIDE_AWAY_M, PLACE_FLOOR);
    }

    private double speeds(int bin, double sign, Seen seen) {
        double share = bins.round[bins.figure[bin]] ? ROUND_SPEED_SHARE : SPEED_SHARE;
        double speed2 = share
                * share
                * (bins.vxMps[bin] * bins.vxMps[bin]
                        + bins.vyMps[bin] * bins.vyMps[bin]
                        + bins.vzMps[bin] * bins.vzMps[bin]);
        int back = bins.back(bin, (int) Math.max(1, Math.round(seen.overS() / Bins.WIDTH_S)));
        double over = (bin - back) * Bins.WIDTH_S;
        double fit = 1;
        if (seen.hasSpeeds()) {
            double vx = bins.vxMps[bin];
            double vy = bins.vyMps[bin];
            if (seen.speedsAreMeans() && over > 0) {
                vx = (bins.xM[bin] - bins.xM[back]) / over;
                vy = (bins.yM[bin] - bins.yM[back]) / over;
            }
            fit *= speed(sign * seen.alongMps() - vx, bins.axMps2[bin], speed2, SPEED_MPS, WIDE_MPS);
            fit *= speed(seen.awayMps() - vy, bins.ayMps2[bin], speed2, SPEED_MPS, WIDE_MPS);
        }
        if (seen.hasClimb() && over > 0) {
            double vz = (bins.zM[bin] - bins.zM[back]) / over;
            fit *= speed(seen.climbMps() - vz, bins.azMps2[bin], speed2, CLIMB_MPS, WIDE_CLIMB_MPS);
        }
        return fit;
    }

    private static double speed(double e, double change, double speed2, double least, double wide) {
        double slack = SLACK_S * change;
        double s2 = least * least + speed2 + slack * slack;
        return ratio(1 + e * e / (3 * s2), Math.sqrt(s2), wide, FLOOR);
    }

    /** Student density with three degrees of freedom over a broad one, over a floor. */
    private static double ratio(double u, double sigma, double wide, double floor) {
        return floor + (1 - floor) * 1.84 * wide / sigma / (u * u);
    }
}
