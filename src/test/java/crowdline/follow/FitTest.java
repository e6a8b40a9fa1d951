package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
        fit.weigh(belief, belief.state(0, BIN));
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
        double s2 = known + 3.5 * 3.5;
        double u = 1 + 25 / s2 / 3;
        assertThat(chance(off) / chance(on)).isCloseTo(Math.pow(1 / (u * u), POWER), within(0.002));
    }
}
