package crowdline.follow;

import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * How well a reading fits a state of the plan, and what it teaches of the state's offsets. First {@link #look} at a bin,
 * then {@link #weigh} its states.
 *
 * <p><b>The evidence.</b> A reading gives up to six numbers: a place (along the axis, away from the crowd, height) and a
 * speed in each of these directions. For one of them let y be what was read, p what is predicted in the bin, m and v the
 * mean and the variance of the offset that the state believes in, and s² the variance of readings about p + m: noise, and
 * what no offset explains. Then e = y − p − m has the variance S = v + s².
 *
 * <p>If the state is right, e has a Student density with three degrees of freedom and scale √S. Its tails are heavy, because
 * pilots and receivers do surprising things: its peak is 0.3676 / √S, and it falls off by 1 / u² with u = 1 + e² / 3S. If any
 * flight at all is flown, y lies somewhere in a range R, with density 1 / R. What counts is the ratio of the two,
 *
 * <pre>  r = R · 0.3676 / √S / u²</pre>
 *
 * <p>For a place it is (1 + r) / 2, since a state may be right although its place is not. The ratios of all numbers are
 * multiplied, as if their errors were independent. From one reading to the next they are not: what is off now is off in a
 * moment too. So a reading counts as only a part a of one, in proportion to the time since the last (see
 * {@link Evidence}), and the chance of the state is multiplied by the product to the power a.
 *
 * <p><b>What is learned.</b> The offset is updated as in a Kalman filter, except that a part a of a reading has the variance
 * s² / a, and one that is far off is trusted less, by 1 / u. So the gain is g = v / (v + s² / a) / u, the new mean m + g e,
 * and the new variance (1 − g) v. For speeds the offset is a share f of the predicted speed p, the same in all directions:
 * m = p f.
 */
final class Fit {
    /** Peak of a Student density with three degrees of freedom and scale 1: 2 / (π √3). */
    private static final double STUDENT_PEAK = 0.3676;

    /**
     * Chance, 0 to 1, that the place of a right state is not. Tuned: 0.25 costs 0.7 %, 0.8 costs 4 %. Less loses the
     * figure when the order has changed, more takes one figure for another.
     */
    private static final double WRONG_PLACE = 0.5;
    /** Metres: range R of places along the A-axis. More believes in the plan more. */
    private static final double RANGE_ALONG_M = 1250;
    /** Metres: R of heights. */
    private static final double RANGE_HEIGHT_M = 1000;
    /** Metres: R of places away from the crowd. */
    private static final double RANGE_AWAY_M = 750;
    /** Metres a second: R of speeds over the ground. */
    private static final double RANGE_MPS = 175;
    /** Metres a second: R of climbs. */
    private static final double RANGE_CLIMB_MPS = 125;

    /** Metres: s of the place along the A-axis. Tuned: 5 to 20 works. Less believes in an offset sooner. */
    private static final double ALONG_M = 10;
    /** Metres: s of the height. Tuned: 3 to 12 works. */
    private static final double HEIGHT_M = 6;
    /** Metres: s of the place away from the crowd, for which no offset is believed. */
    private static final double AWAY_M = 70;
    /**
     * Metres along the A-axis that even the offset itself is off its plan. Less loses the figure when the order has
     * changed, more takes one figure for another.
     */
    private static final double PLANNED_ALONG_M = 200;
    /**
     * Metres a second: s of every speed. Tuned: 3.5 to 7 works, 2 costs 0.9 %. Less loses the figure when the wind is
     * not as told, more takes one figure for another.
     */
    private static final double SPEED_MPS = 3.5;

    /**
     * Share of the predicted speed that s is more, in squares: a pilot's aim is off by an angle, so what is fast is further
     * off. Tuned: 0 costs 0.5 %, most on what is fast; 0.1 costs 2 %.
     */
    private static final double SPEED_SHARE = 0.05;

    /** Slope against the A-axis: a path nearer to it is meant to be along it, however it is predicted. */
    private static final double NEARLY_ALONG = 0.5;
    /** Share of a speed aside that is predicted there by which s is more, in squares: a pilot would have none of it. Judgement. */
    private static final double ASIDE_SHARE = 0.7;
    /** Seconds in which who comes in beside his line would be on it. Tuned: 5 works too. */
    private static final double HOME_S = 8;
    /** Slope against the line at which he does so at most. Judgement. */
    private static final double HOME_SLOPE = 0.2;
    /** Share of that speed by which s is more, in squares. Tuned: 1.2 works too. */
    private static final double HOME_SHARE = 0.5;
    /** Share of the speed along the A-axis on such a line. */
    private static final double LINE_IN = 0.9;
    /**
     * Metres below the lowest place planned for a figure; lower, it is a landing or something else. But for one that is still
     * fast and has been believed lower than planned by as much: it has ended its figure too low.
     */
    private static final double LOWER_M = 40;
    /** Share of the mean speed of the act's figures, from which an aircraft is fast. */
    private static final double FAST_SHARE = 0.9;
    /** Factor on the evidence down there. */
    private static final double TOO_LOW = 0.01;

    /** Square metres: no offset is known better. */
    private static final double LEAST_M2 = 1;
    /** Square of a share: nor is the speed, than to 0.1 %. */
    private static final double LEAST_SHARE2 = 1e-6;

    /**
     * Seconds in which an aircraft on a way is back at the height planned, for the most part. Tuned: without end and 8 both
     * cost 0.4 %: the one takes a circuit to land for a way, the other an aircraft that came in low for one off the plan.
     */
    private static final double DUE_S = 20;

    private static final int[] OFFSETS = {Moments.ALONG, Moments.HEIGHT};
    private static final double[] OFFSET_M2 = {ALONG_M * ALONG_M, HEIGHT_M * HEIGHT_M};
    private static final double[] OFFSET_PEAK = {RANGE_ALONG_M * STUDENT_PEAK, RANGE_HEIGHT_M * STUDENT_PEAK};
    private static final double[] SPEED_PEAK = {
        RANGE_MPS * STUDENT_PEAK, RANGE_MPS * STUDENT_PEAK, RANGE_CLIMB_MPS * STUDENT_PEAK
    };

    private final Bins bins;
    private final double lowestM;
    private final double usualMps;
    /** How far the reading is from where the bin looked at has it: the offsets, without what a state believes of them. */
    private final double[] offM = new double[OFFSETS.length];

    private final double[] seenMps = new double[SPEED_PEAK.length];
    private final double[] planMps = new double[SPEED_PEAK.length];
    /** What all states of the bin have in common. */
    private double common;

    /** Whether the reading is lower than any figure, and whether it is fast enough for one all the same. */
    private boolean tooLow;

    private boolean mayBeLow;
    private double power;
    /** Square metres a second: s² of every speed in the bin looked at. */
    private double speed2;
    /** And how much more it is away from the crowd. */
    private double aside2;
    /** The moments of a state as they were. */
    private final double[] kept = new double[Moments.WIDTH];

    private double perPower;
    /** What the bin looked at is part of, where it may be flown on any path. */
    private @Nullable Way way;

    private boolean atEnd;
    /** Which of the speeds are known, from and to. */
    private int firstSpeed;

    private int endSpeed;

    Fit(Bins bins) {
        this.bins = bins;
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < bins.size; i++) {
            boolean shown = !bins.timed[i] && !bins.isWay(bins.figure[i]);
            lowest = shown ? Math.min(lowest, bins.zM[i]) : lowest;
        }
        lowestM = lowest;
        usualMps = usual(bins);
    }

    /** The mean speed of the act's figures and ways, metres a second; 0 where none is predicted. */
    double usualMps() {
        return usualMps;
    }

    /** The mean speed of all that has a predicted path. */
    private static double usual(Bins bins) {
        return IntStream.range(0, bins.size)
                .filter(i -> !bins.timed[i])
                .mapToDouble(i -> Math.sqrt(bins.squareOfSpeed(i)))
                .average()
                .orElse(0);
    }

    /** As fast as figures are flown and nobody lands. */
    private boolean isFast(Seen seen) {
        double climb = seen.hasClimb() ? seen.climbMps() : 0;
        return Math.sqrt(seen.groundMps() * seen.groundMps() + climb * climb) > FAST_SHARE * usualMps;
    }

    /**
     * Takes from a bin what all its states of one direction have in common.
     *
     * @param sign −1 where the figure is flown the other way along the A-axis than planned, else 1
     * @param power how much of a reading this one counts as, over 0 to 1
     */
    void look(int bin, double sign, Seen seen, double power) {
        way = null;
        this.power = power;
        perPower = 1 / power;
        offM[0] = sign * seen.alongM() - bins.xM[bin];
        offM[1] = seen.heightM() - bins.zM[bin];
        speed2 = SPEED_MPS * SPEED_MPS + SPEED_SHARE * SPEED_SHARE * bins.squareOfSpeed(bin);
        common = place(RANGE_ALONG_M, PLANNED_ALONG_M, offM[0])
                * place(RANGE_AWAY_M, AWAY_M, seen.awayM() - bins.yM[bin]);
        Way way = bins.way(bin);
        double lowest = way == null ? lowestM : Math.min(lowestM, way.lowestM());
        tooLow = seen.heightM() < lowest - LOWER_M;
        mayBeLow = tooLow && seen.hasSpeeds() && isFast(seen);
        speeds(bin, sign, seen);
    }

    /** The bin looked at is of a way: however little its path fits, its states fit as well as a way on any path does. */
    void onAnyPath(Way way, boolean atEnd) {
        this.way = way;
        this.atEnd = atEnd;
    }

    /** How well a place fits that no state has an offset for. */
    private static double place(double rangeM, double sigmaM, double offM) {
        double sigmas = offM / sigmaM;
        double u = 1 + sigmas * sigmas / 3;
        return WRONG_PLACE + (1 - WRONG_PLACE) * rangeM * STUDENT_PEAK / sigmaM / (u * u);
    }

    private void speeds(int bin, double sign, Seen seen) {
        int back = Math.max(0, bin - (int) Math.max(1, Math.round(seen.overS() / Bins.WIDTH_S)));
        double over = (bin - back) * Bins.WIDTH_S;
        firstSpeed = seen.hasSpeeds() ? 0 : 2;
        endSpeed = seen.hasClimb() && over > 0 ? 3 : 2;
        seenMps[0] = sign * seen.alongMps();
        planMps[0] = bins.vxMps[bin];
        double home = home(bin, seen);
        seenMps[1] = seen.awayMps() - home;
        planMps[1] = bins.vyMps[bin];
        double aside = Math.abs(planMps[1]);
        aside2 = aside < NEARLY_ALONG * Math.abs(planMps[0]) ? ASIDE_SHARE * ASIDE_SHARE * aside * aside : 0;
        aside2 += HOME_SHARE * HOME_SHARE * home * home;
        seenMps[2] = seen.climbMps();
        planMps[2] = (bins.zM[bin] - bins.zM[back]) / over;
    }

    /** How fast an aircraft beside the line in at the end of a way comes back on to it, metres a second away from the crowd. */
    private double home(int bin, Seen seen) {
        double along = Math.abs(bins.vxMps[bin]);
        boolean lineIn = bins.isWay(bins.figure[bin])
                && bins.elastic[bin]
                && along > LINE_IN * Math.sqrt(bins.squareOfSpeed(bin));
        double most = HOME_SLOPE * along;
        return lineIn ? Math.max(-most, Math.min(most, (bins.yM[bin] - seen.awayM()) / HOME_S)) : 0;
    }

    /**
     * Weighs a state of the bin looked at and moves its offsets towards what was seen.
     *
     * @return whether its path fits better than the least it fits
     */
    boolean weigh(Belief belief, int state, Seen seen) {
        double[] cells = belief.cells;
        int cell = state * Moments.WIDTH;
        double c = belief.chance[state];
        double perChance = 1 / c;
        double fit = common;
        if (tooLow && !(mayBeLow && cells[cell + Moments.HEIGHT] * perChance < -LOWER_M)) {
            fit *= TOO_LOW;
        }
        double least = 0;
        double higherM = 0;
        if (way != null) {
            higherM = cells[cell + Moments.HEIGHT] * perChance;
            least = way.fit(seen, atEnd, higherM);
        }
        System.arraycopy(cells, cell, kept, 0, Moments.WIDTH);
        for (int k = 0; k < OFFSETS.length; k++) {
            int i = cell + OFFSETS[k];
            double mean = cells[i] * perChance;
            double variance = Math.max(cells[i + 1] * perChance - mean * mean, LEAST_M2);
            double e = offM[k] - mean;
            double perSquare = 1 / (variance + OFFSET_M2[k]);
            double u = 1 + e * e * perSquare / 3;
            double ratio = OFFSET_PEAK[k] * Math.sqrt(perSquare) / (u * u);
            fit *= WRONG_PLACE + (1 - WRONG_PLACE) * ratio;
            double gain = variance / (variance + OFFSET_M2[k] * perPower) / u;
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
            double square = k == 1 ? speed2 + aside2 : speed2;
            double perSquare = 1 / (known + square);
            double u = 1 + e * e * perSquare / 3;
            fit *= SPEED_PEAK[k] * Math.sqrt(perSquare) / (u * u);
            double gain = known / (known + square * perPower) / u;
            faster += v == 0 ? 0 : gain * e / v;
            variance *= 1 - gain;
        }
        cells[i] = faster;
        cells[i + 1] = variance + faster * faster;
        boolean byPath = fit >= least;
        if (!byPath) {
            for (int k = 0; k < Moments.WIDTH; k++) {
                cells[cell + k] = kept[k] * perChance;
            }
            if (way != null) {
                double nearer = nearer(higherM, way.isLevel(), seen.newS());
                cells[cell + Moments.HEIGHT] = nearer;
                cells[cell + Moments.HEIGHT + 1] += nearer * nearer - higherM * higherM;
            }
        }
        fit += least;
        double after = Math.exp(power * Math.log(fit)) * c;
        belief.chance[state] = after;
        for (int k = 0; k < Moments.WIDTH; k++) {
            cells[cell + k] *= after;
        }
        return byPath;
    }

    /** How much higher than planned it still is, on its way back to the height planned by whatever path. */
    private double nearer(double higherM, boolean level, double inS) {
        double due = higherM * Math.exp(-inS / DUE_S);
        return level ? Math.max(Math.min(0, due), Math.min(offM[1], Math.max(0, due))) : due;
    }
}
