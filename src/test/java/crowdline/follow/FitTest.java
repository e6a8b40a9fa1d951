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
        return new Seen(
                bins.xM[BIN] + offAlongM, offAwayM, bins.zM[BIN] + offHeightM, alongMps, 0, 0, 1, false, 2 * POWER);
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
            weigh(belief, seen(15, 60, -12, 66));
        }
        assertThat(believed(belief, Moments.ALONG)).isCloseTo(15, within(2.0));
        assertThat(believed(belief, Moments.AWAY)).isCloseTo(60, within(3.0));
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
}
