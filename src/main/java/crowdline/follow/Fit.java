package crowdline.follow;

import java.util.Arrays;

/**
 * How well a reading fits a state of the plan, and what it teaches of the state's offsets. First {@link #look} at a bin,
 * then {@link #weigh} its states. Every feature counts with a Student density over a floor, so that no single one can
 * rule a state out. All widths are tuned.
 */
final class Fit {
    private static final double FLOOR = 0.01;
    private static final double PLACE_FLOOR = 0.5;
    /** Where a flight can be at all: half widths of the broad density. */
    private static final double WIDE_ALONG_M = 250;

    private static final double WIDE_HEIGHT_M = 200;
    private static final double WIDE_AWAY_M = 150;
    private static final double WIDE_MPS = 35;
    private static final double WIDE_CLIMB_MPS = 25;

    /** Beyond what is believed of the offsets. */
    private static final double ALONG_M = 10;

    private static final double HEIGHT_M = 6;
    private static final double AWAY_M = 10;
    /** Of the place as planned, whatever the offsets. */
    private static final double PLANNED_ALONG_M = 200;

    private static final double SPEED_MPS = 3.5;
    /** Share of the speed in which the path differs in direction. */
    private static final double SPEED_SHARE = 0.06;
    /** How far the phase may be off within a bin and between two, seconds. */
    private static final double SLACK_S = 0.25;
    /** Nobody flies figures much lower than the lowest planned: below that it is a landing, or something else. */
    private static final double LOWER_M = 40;

    private static final double TOO_LOW = 0.01;

    private static final int[] OFFSETS = {Moments.ALONG, Moments.HEIGHT, Moments.AWAY};
    private static final double[] PLACE_PEAK = peaks(PLACE_FLOOR, WIDE_ALONG_M, WIDE_HEIGHT_M, WIDE_AWAY_M);
    private static final double[] SPEED_PEAK = peaks(FLOOR, WIDE_MPS, WIDE_MPS, WIDE_CLIMB_MPS);
    private static final double LEAST_M2 = 1;
    private static final double LEAST_SHARE2 = 1e-6;

    private final Bins bins;
    private final double lowestM;
    /** Of the bin looked at: how far the reading is from where it is predicted, and the square it may be off anyway. */
    private final double[] offM = new double[OFFSETS.length];

    private final double[] offM2 = new double[OFFSETS.length];
    /** Speeds seen and predicted, and the square they may be off. */
    private final double[] seenMps = new double[SPEED_PEAK.length];

    private final double[] planMps = new double[SPEED_PEAK.length];
    private final double[] speed2 = new double[SPEED_PEAK.length];
    private double common;
    private double power;
    private double perPower;
    /** Which of the speeds are known, from and to. */
    private int firstSpeed;

    private int endSpeed;

    Fit(Bins bins) {
        this.bins = bins;
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < bins.size; i++) {
            lowest = bins.timed[i] ? lowest : Math.min(lowest, bins.zM[i]);
        }
        lowestM = lowest;
    }

    /**
     * Takes from a bin what all its states of one direction have in common.
     *
     * @param power how much of the reading is news, over 0 to 1
     */
    void look(int bin, double sign, Seen seen, double power) {
        this.power = power;
        perPower = 1 / power;
        place(0, sign * seen.alongM() - bins.xM[bin], ALONG_M, bins.vxMps[bin]);
        place(1, seen.heightM() - bins.zM[bin], HEIGHT_M, bins.vzMps[bin]);
        place(2, seen.awayM() - bins.yM[bin], AWAY_M, bins.vyMps[bin]);
        double planned = offM[0] / PLANNED_ALONG_M;
        double u = 1 + planned * planned / 3;
        common = PLACE_FLOOR + PLACE_PEAK[0] / PLANNED_ALONG_M / (u * u);
        if (seen.heightM() < lowestM - LOWER_M) {
            common *= TOO_LOW;
        }
        speeds(bin, sign, seen);
    }

    private void place(int k, double off, double least, double speed) {
        double slack = SLACK_S * speed;
        offM[k] = off;
        offM2[k] = least * least + slack * slack;
    }

    private void speeds(int bin, double sign, Seen seen) {
        int back = bins.back(bin, (int) Math.max(1, Math.round(seen.overS() / Bins.WIDTH_S)));
        double over = (bin - back) * Bins.WIDTH_S;
        boolean means = seen.speedsAreMeans() && over > 0;
        firstSpeed = seen.hasSpeeds() ? 0 : 2;
        endSpeed = seen.hasClimb() && over > 0 ? 3 : 2;
        double vx = bins.vxMps[bin];
        double vy = bins.vyMps[bin];
        double vz = bins.vzMps[bin];
        double least = SPEED_MPS * SPEED_MPS + SPEED_SHARE * SPEED_SHARE * (vx * vx + vy * vy + vz * vz);
        speed(0, sign * seen.alongMps(), means ? (bins.xM[bin] - bins.xM[back]) / over : vx, least, bins.axMps2[bin]);
        speed(1, seen.awayMps(), means ? (bins.yM[bin] - bins.yM[back]) / over : vy, least, bins.ayMps2[bin]);
        speed(2, seen.climbMps(), (bins.zM[bin] - bins.zM[back]) / over, least, bins.azMps2[bin]);
    }

    private void speed(int k, double seen, double plan, double least, double change) {
        double slack = SLACK_S * change;
        seenMps[k] = seen;
        planMps[k] = plan;
        speed2[k] = least + slack * slack;
    }

    /** Weighs a state of the bin looked at and moves its offsets towards what was seen. */
    void weigh(Belief belief, int state) {
        double[] cells = belief.cells;
        int cell = state * Moments.WIDTH;
        double c = belief.chance[state];
        double perChance = 1 / c;
        double fit = common;
        for (int k = 0; k < OFFSETS.length; k++) {
            int i = cell + OFFSETS[k];
            double mean = cells[i] * perChance;
            double variance = Math.max(cells[i + 1] * perChance - mean * mean, LEAST_M2);
            double e = offM[k] - mean;
            double perSquare = 1 / (variance + offM2[k]);
            double u = 1 + e * e * perSquare / 3;
            double late = variance + offM2[k] * perPower;
            double both = 1 / (u * u * late);
            fit *= PLACE_FLOOR + PLACE_PEAK[k] * Math.sqrt(perSquare) * late * both;
            double gain = variance * u * both;
            mean += gain * e;
            cells[i] = mean;
            cells[i + 1] = (1 - gain) * variance + mean * mean;
        }
        int i = cell + Moments.FASTER;
        double faster = cells[i] * perChance;
        double variance = Math.max(cells[i + 1] * perChance - faster * faster, LEAST_SHARE2);
        for (int k = firstSpeed; k < endSpeed; k++) {
            double v = planMps[k];
            double e = seenMps[k] - v * (1 + faster);
            double known = variance * v * v;
            double perSquare = 1 / (known + speed2[k]);
            double u = 1 + e * e * perSquare / 3;
            double late = known + speed2[k] * perPower;
            double both = 1 / (u * u * late);
            fit *= FLOOR + SPEED_PEAK[k] * Math.sqrt(perSquare) * late * both;
            double gain = variance * v * u * both;
            faster += gain * e;
            variance *= 1 - gain * v;
        }
        cells[i] = faster;
        cells[i + 1] = variance + faster * faster;
        double after = Math.exp(power * Math.log(fit)) * c;
        belief.chance[state] = after;
        for (int k = 0; k < Moments.WIDTH; k++) {
            cells[cell + k] *= after;
        }
    }

    /** Student densities with three degrees of freedom at their middle, over broad ones, for a spread of 1. */
    private static double[] peaks(double floor, double... wide) {
        return Arrays.stream(wide).map(w -> (1 - floor) * 1.84 * w).toArray();
    }
}
