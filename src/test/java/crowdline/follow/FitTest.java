package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import org.junit.jupiter.api.Test;

/** One state of the plan and one reading after another. */
class FitTest {
    private static final int BIN = 20;
    /** A second's worth of readings is half a reading's news each. */
    private static final double POWER = 0.5;

    private final FollowPlan plan = Small.plan(50, 40);
    private final Bins bins = plan.bins;
    private final Fit fit = new Fit(bins);

    private Seen seen(double offAlongM, double offAwayM, double offHeightM, double alongMps) {
        return new Seen(bins.xM[BIN] + offAlongM, offAwayM, bins.zM[BIN] + offHeightM, alongMps, 0, 0, 1, 2 * POWER);
    }

    private Belief state() {
        Belief belief = new Belief(bins);
        belief.add(0, BIN, Moments.of(1, 400, 400), 1);
        return belief;
    }

    private void weigh(Belief belief, Seen seen) {
        fit.look(BIN, 1, seen, POWER);
        fit.weigh(belief, belief.state(0, BIN), seen);
    }

    private double believed(Belief belief, int offset) {
        int state = belief.state(0, BIN);
        return belief.moment(state, offset) / belief.chance[state];
    }

    @Test
    void whatIsSeenAgainAndAgainIsBelieved() {
        Belief belief = state();
        for (int i = 0; i < 20; i++) {
            weigh(belief, seen(15, 0, -12, 66));
        }
        assertThat(believed(belief, Moments.ALONG)).isCloseTo(15, within(2.0));
        assertThat(believed(belief, Moments.HEIGHT)).isCloseTo(-12, within(1.0));
        assertThat(believed(belief, Moments.FASTER)).isCloseTo(0.1, within(0.02));
    }

    /** What the last of so many readings at one speed does to the chance of a state. */
    private double lastFactor(double alongMps, int readings) {
        Belief belief = state();
        int state = belief.state(0, BIN);
        double before = 1;
        for (int i = 0; i < readings; i++) {
            before = belief.chance[state];
            weigh(belief, seen(0, 0, 0, alongMps));
        }
        return belief.chance[state] / before;
    }

    /** Otherwise an aircraft a little fast all the time would look less and less like the plan. */
    @Test
    void differenceThatIsKnownCountsOnce() {
        assertThat(lastFactor(69, 1) / lastFactor(60, 1)).isLessThan(0.85);
        assertThat(lastFactor(69, 20) / lastFactor(60, 20)).isCloseTo(1, within(0.02));
    }

    /** Four metres a second to the side are an angle of four degrees at 60 m/s and of one at 240. */
    @Test
    void whatIsFastMayBeFurtherOff() {
        Bins slow = Small.kink(new Vec(60, 0, 0), new Vec(60, 0, 0)).bins;
        Bins fast = Small.kink(new Vec(240, 0, 0), new Vec(240, 0, 0)).bins;
        assertThat(aside(fast, 240)).isGreaterThan(aside(slow, 60) + 0.2);
    }

    /** How much less a bin fits for 12 m/s to the side, as a share of its chance. */
    private static double aside(Bins path, double mps) {
        double[] chance = new double[2];
        for (int i = 0; i < 2; i++) {
            Fit fit = new Fit(path);
            Belief belief = new Belief(path);
            belief.add(0, BIN, Moments.of(1, 400, 400), 1);
            Seen seen = new Seen(path.xM[BIN], 0, path.zM[BIN], mps, 12 * i, 0, 1, 2 * POWER);
            fit.look(BIN, 1, seen, POWER);
            fit.weigh(belief, belief.state(0, BIN), seen);
            chance[i] = belief.chance[belief.state(0, BIN)];
        }
        return chance[1] / chance[0];
    }

    @Test
    void otherWayRoundFitsFarWorse() {
        Belief right = state();
        weigh(right, seen(0, 0, 0, 60));
        Belief wrong = state();
        weigh(wrong, seen(0, 0, 0, -60));
        assertThat(right.chance[right.state(0, BIN)]).isGreaterThan(5 * wrong.chance[wrong.state(0, BIN)]);
    }

    /** The lowest of this plan is 300 m. */
    @Test
    void figuresAreNotFlownMuchLowerThanTheLowest() {
        Belief low = state();
        weigh(low, seen(0, 0, -41, 60));
        Belief atMost = state();
        weigh(atMost, seen(0, 0, -39, 60));
        assertThat(low.chance[low.state(0, BIN)]).isLessThan(0.2 * atMost.chance[atMost.state(0, BIN)]);
    }

    private double chance(Seen seen) {
        Belief belief = state();
        weigh(belief, seen);
        return belief.chance[belief.state(0, BIN)];
    }

    /** What is left of a state's chance where the speed aside is not the one predicted but this. */
    private static double leftAside(Vec predictedMps, double awayMps) {
        Bins path = Small.kink(predictedMps, predictedMps).bins;
        double[] chance = new double[2];
        for (int i = 0; i < 2; i++) {
            Belief belief = new Belief(path);
            belief.add(0, BIN, Moments.of(1, 400, 400), 1);
            Fit fit = new Fit(path);
            double seenMps = i == 0 ? predictedMps.y() : awayMps;
            Seen seen = new Seen(path.xM[BIN], path.yM[BIN], path.zM[BIN], predictedMps.x(), seenMps, 0, 1, 2 * POWER);
            fit.look(BIN, 1, seen, POWER);
            fit.weigh(belief, belief.state(0, BIN), seen);
            chance[i] = belief.chance[belief.state(0, BIN)];
        }
        return chance[1] / chance[0];
    }

    /** Predicted to come out of its torque roll 20° off the axis, and flown along it, it was off the plan for a whole figure. */
    @Test
    void speedAsideIsNotMeantWhereAFigureIsFlownAlongTheAxis() {
        assertThat(leftAside(new Vec(80, 28, 0), -5)).isGreaterThan(0.3);
        assertThat(leftAside(new Vec(80, 0, 0), -33)).as("along it, and off it").isLessThan(0.1);
        assertThat(leftAside(new Vec(28, 80, 0), 47)).as("a turn").isLessThan(0.3);
    }

    /** The chance left of a state that has been believed so much higher than planned, by a reading 60 m below the lowest. */
    private double leftBelow(double believedM, double alongMps) {
        Belief belief = new Belief(bins);
        Moments m = Moments.of(1, 400, 400);
        m.moved(m, 0, believedM);
        belief.add(0, BIN, m, 1);
        weigh(belief, seen(0, 0, -60, alongMps));
        return belief.chance[belief.state(0, BIN)];
    }

    /** A jet that came out of its loop 140 m too low was off the plan for the next 14 s. */
    @Test
    void whatHasEndedItsFigureTooLowMayBeLowWhileItIsFast() {
        double fast = leftBelow(-60, 60);
        assertThat(leftBelow(-39, 60)).as("not believed so low").isLessThan(0.2 * fast);
        assertThat(leftBelow(-60, 53)).as("no faster than a landing").isLessThan(0.2 * fast);
        assertThat(leftBelow(-60, 57)).isGreaterThan(0.5 * fast);
    }

    /** Where the order has changed a figure is flown somewhere else, and its speeds are all there is to know it by. */
    @Test
    void wrongPlaceSpeaksAgainstAFigureButNotForLong() {
        assertThat(chance(seen(0, 0, 0, 60)) / chance(seen(900, 0, 0, 60))).isBetween(3.0, 60.0);
        assertThat(chance(seen(0, 0, 0, 60)) / chance(seen(0, 500, 0, 60))).isBetween(1.5, 4.0);
        assertThat(chance(seen(900, 500, 0, 60))).as("more than any flight").isGreaterThan(10);
    }

    /** A state that believes in an offset is still the less likely the larger that is. */
    @Test
    void offsetThatIsBelievedStillCounts() {
        Belief far = new Belief(bins);
        Moments m = new Moments();
        m.moved(Moments.of(1, 400, 400), 600, 0);
        far.add(0, BIN, m, 1);
        weigh(far, seen(600, 0, 0, 60));
        assertThat(chance(seen(0, 0, 0, 60)) / far.chance[far.state(0, BIN)]).isBetween(1.3, 4.0);
    }

    /** The ratio derived in the Javadoc, of one speed that is off by five, worked out by hand. */
    @Test
    void evidenceIsTheStudentDensityOverAnyFlight() {
        Seen on = seen(0, 0, 0, 60);
        Seen off = seen(0, 0, 0, 65);
        double known = Moments.FASTER2 * 60 * 60;
        double s2 = known + 3.5 * 3.5 + 3 * 3;
        double u = 1 + 25 / s2 / 3;
        assertThat(chance(off) / chance(on)).isCloseTo(Math.pow(1 / (u * u), POWER), within(0.002));
    }

    /** R · 0.3676 / √S / u², as derived in the Javadoc. */
    private static double student(double range, double s2, double e) {
        double u = 1 + e * e / s2 / 3;
        return range * 0.3676 / Math.sqrt(s2) / (u * u);
    }

    private static double orWrong(double ratio) {
        return (1 + ratio) / 2;
    }

    /** What is believed of one number: its mean and variance, before and after a part of a reading. */
    private static final class Believed {
        private double mean;
        private double variance;

        Believed(double mean, double variance) {
            this.mean = mean;
            this.variance = variance;
        }

        /** Learns that p (1 + mean) or p + mean was off by e, by a part a of a reading with noise of s². */
        void learn(double e, double known, double s2, double a, double per) {
            double u = 1 + e * e / (known + s2) / 3;
            double gain = known / (known + s2 / a) / u;
            mean += gain * e / per;
            variance *= 1 - gain;
        }
    }

    private static final int CLIMB = 70;

    /** In a climb of 30 m/s at 60 m/s over the ground; nothing is as predicted, nor as believed. */
    private void isAsDerived(double sign, double alongMps, double awayMps, double climbMps) {
        Believed along = new Believed(12, 400);
        Believed height = new Believed(-7, 225);
        Believed faster = new Believed(0.02, 0.0144);
        Belief belief = new Belief(bins);
        Moments m = new Moments();
        m.moved(Moments.of(0.4, along.variance, height.variance), along.mean, height.mean);
        m.parts[Moments.FASTER] = 0.4 * faster.mean;
        m.parts[Moments.FASTER + 1] = 0.4 * (faster.variance + faster.mean * faster.mean);
        belief.add(2, CLIMB, m, 1);
        int state = belief.state(2, CLIMB);

        double expected = orWrong(student(1250, 200 * 200, 25)) * orWrong(student(750, 70 * 70, 40));
        expected *= orWrong(student(1250, along.variance + 100, 25 - along.mean));
        along.learn(25 - along.mean, along.variance, 100, POWER, 1);
        expected *= orWrong(student(1000, height.variance + 36, 10 - height.mean));
        height.learn(10 - height.mean, height.variance, 36, POWER, 1);
        double[] seen = {alongMps, awayMps, climbMps};
        double[] planned = {60, 0, 30};
        double[] range = {175, 175, 125};
        double ofSpeed = 3.5 * 3.5 + 0.05 * 0.05 * (60 * 60 + 30 * 30);
        for (int k = 0; k < seen.length; k++) {
            if (!Double.isNaN(seen[k])) {
                double p = planned[k];
                double e = seen[k] - p * (1 + faster.mean);
                double known = faster.variance * p * p;
                expected *= student(range[k], known + ofSpeed, e);
                if (p != 0) {
                    faster.learn(e, known, ofSpeed, POWER, p);
                }
            }
        }

        Seen read = new Seen(
                sign * (bins.xM[CLIMB] + 25),
                bins.yM[CLIMB] + 40,
                bins.zM[CLIMB] + 10,
                sign * alongMps,
                awayMps,
                climbMps,
                1,
                2 * POWER);
        fit.look(CLIMB, sign, read, POWER);
        fit.weigh(belief, state, read);

        assertThat(belief.chance[state] / 0.4).isCloseTo(Math.pow(expected, POWER), within(1e-3 * expected));
        m.set(belief, state);
        assertThat(m.mean(Moments.ALONG)).isCloseTo(along.mean, within(1e-9));
        assertThat(m.variance(Moments.ALONG)).isCloseTo(along.variance, within(1e-6));
        assertThat(m.mean(Moments.HEIGHT)).isCloseTo(height.mean, within(1e-9));
        assertThat(m.variance(Moments.HEIGHT)).isCloseTo(height.variance, within(1e-6));
        assertThat(m.mean(Moments.FASTER)).isCloseTo(faster.mean, within(1e-5));
        assertThat(m.variance(Moments.FASTER)).isCloseTo(faster.variance, within(1e-6));
    }

    @Test
    void chanceAndOffsetsAreAsDerived() {
        isAsDerived(1, 66, 3, 27);
        isAsDerived(-1, 66, 3, 27);
        isAsDerived(1, 50, -6, Double.NaN);
        isAsDerived(1, Double.NaN, Double.NaN, 34);
        isAsDerived(-1, Double.NaN, Double.NaN, Double.NaN);
    }

    /** One that ended its figure 300 m low was no longer on its way back once that had turned out otherwise than planned. */
    @Test
    void heightOfAWayIsComeBackToByWhateverPath() {
        assertThat(higherOnAWay(-300, -200)).isCloseTo(-200, within(1e-6));
        assertThat(higherOnAWay(-300, 50)).isCloseTo(0, within(1e-6));
        assertThat(higherOnAWay(-300, -400))
                .as("not further off, and less by 2 POWER of 20 s")
                .isCloseTo(-300 * Math.exp(-2 * POWER / 20), within(1e-6));
    }

    /** How much higher than planned it is believed to be after a reading on quite another path. */
    private double higherOnAWay(double believedM, double seenM) {
        Moments m = new Moments();
        m.moved(Moments.of(1, 400, 400), 0, believedM);
        Belief belief = new Belief(bins);
        belief.add(0, BIN, m, 1);
        Seen seen = seen(2000, 1500, seenM, -60);
        fit.look(BIN, 1, seen, POWER);
        fit.onAnyPath(new Way(bins.zM[BIN], bins.zM[BIN], 0, 0, 50, 70), false);
        assertThat(fit.weigh(belief, belief.state(0, BIN), seen))
                .as("by its path")
                .isFalse();
        return believed(belief, Moments.HEIGHT);
    }

    /** As it was, a pilot who came in beside his line fitted the end of any way better that was planned askew. */
    @Test
    void whoIsBesideTheLineInComesBackOnToIt() throws Exception {
        Bins monoplane = FollowTrial.display("wrackenholt/quickthorn-solo").plan.bins;
        int end = monoplane.first[8] - 10;
        assertThat(monoplane.isWay(7)).isTrue();
        double onLine = comesIn(monoplane, end, 0, 0);
        assertThat(comesIn(monoplane, end, 120, -15) / comesIn(monoplane, end, 120, 15))
                .isGreaterThan(10);
        assertThat(comesIn(monoplane, end, -120, 15) / comesIn(monoplane, end, -120, -15))
                .isGreaterThan(10);
        assertThat(comesIn(monoplane, end, 0, 15)).isLessThan(onLine / 5);
        int turning = monoplane.first[7] + 57;
        assertThat(monoplane.elastic[turning]).isFalse();
        assertThat(comesIn(monoplane, turning, 120, 0))
                .as("in a turn")
                .isGreaterThan(comesIn(monoplane, turning, 120, -15));
    }

    private static double comesIn(Bins bins, int bin, double besideM, double towardsMps) {
        Seen seen = new Seen(
                bins.xM[bin],
                bins.yM[bin] + besideM,
                bins.zM[bin],
                bins.vxMps[bin],
                bins.vyMps[bin] + towardsMps,
                0,
                1,
                2);
        Belief belief = new Belief(bins);
        belief.add(1, bin, Moments.of(1, 400, 400), 1);
        Fit fit = new Fit(bins);
        fit.look(bin, 1, seen, 1);
        fit.weigh(belief, belief.state(1, bin), seen);
        return belief.chance[belief.state(1, bin)];
    }
}
