package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OutsidePlanTest {
    private final Bins bins = Small.plan(50, 40).bins;
    private final OutsidePlan outside = new OutsidePlan(bins, new Order(bins));

    private double begun() {
        Belief before = new Belief(bins);
        before.before = 1;
        Belief then = new Belief(bins);
        outside.step(before, then);
        return 1 - then.before;
    }

    /** It was said to have begun three minutes before it did, and seven kilometres away. */
    @Test
    void actHardlyBeginsFarFromItsPlace() {
        double there = begun();
        outside.isAtStart(0.001);
        assertThat(there).isGreaterThan(0.001);
        assertThat(begun()).isLessThan(there / 100);
    }

    @Test
    void whatIsOffThePlanComesBackWithinAFigureToo() {
        Belief off = new Belief(bins);
        off.off = 1;
        Belief then = new Belief(bins);
        for (int i = 0; i < 5; i++) {
            then.clear();
            outside.step(off, then);
        }
        assertThat(then.chance[then.state(1, bins.first[1])]).isPositive();
        assertThat(then.chance[then.state(1, bins.first[1] + 10)]).isPositive();
        assertThat(then.after).as("or the act ends there").isPositive();
    }
}
