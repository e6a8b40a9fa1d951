package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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

    private Belief fiveStepsOff() {
        Belief off = new Belief(bins);
        off.off = 1;
        Belief then = new Belief(bins);
        for (int i = 0; i < 5; i++) {
            then.clear();
            outside.step(off, then);
        }
        then.settle(0, 0, 0);
        return then;
    }

    /** Once in 60 s it begins, once in 120 s it ends off the plan, and 14 in a thousand come back in a second. */
    @Test
    void chancesGoWhereTheyShouldAndNoneIsLost() {
        Belief then = fiveStepsOff();
        assertThat(then.after).isCloseTo(0.1 / 120, within(1e-6));
        assertThat(then.in(0) + then.in(1)).as("of every fifth step").isCloseTo(0.014 * 0.5, within(1e-6));
        assertThat(then.in(0) + then.in(1) + then.after + then.unplanned() + then.before)
                .isCloseTo(1, within(1e-12));
        assertThat(then.in(1)).as("most to where it was to go on").isPositive();
        assertThat(begun()).isCloseTo(0.1 / 60, within(1e-12));
        Belief before = new Belief(bins);
        before.before = 1;
        Belief begun = new Belief(bins);
        outside.step(before, begun);
        assertThat(begun.settle(0, 0, 0)).isTrue();
        assertThat(begun.in(0)).as("in its first figure").isCloseTo(0.1 / 60, within(1e-12));
        Belief gently = new Belief(bins);
        gently.offGently = 1;
        begun.clear();
        outside.step(gently, begun);
        assertThat(begun.after).as("gently or not").isCloseTo(0.1 / 120, within(1e-12));
    }

    @Test
    void mostOfWhatComesBackDoesSoAtTheStartOfAFigure() {
        Belief then = fiveStepsOff();
        double atStart = 0;
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            atStart += then.chance[then.state(lane, 50)];
        }
        assertThat(atStart / then.in(1)).isCloseTo(0.85, within(1e-6));
    }

    @Test
    void itDoesNotComeBackAtEveryStep() {
        Belief off = new Belief(bins);
        off.offGently = 1;
        Belief then = new Belief(bins);
        outside.step(off, then);
        assertThat(then.offGently).isCloseTo(1 - 0.1 / 120, within(1e-12));
    }

    @Test
    void whatLeavesThePlanMayBeFlownGently() {
        Belief to = new Belief(bins);
        OutsidePlan.goOff(to, 0.4);
        assertThat(to.off).isEqualTo(0.2);
        assertThat(to.offGently).isEqualTo(0.2);
        OutsidePlan.goOff(to, 0.2);
        assertThat(to.unplanned()).isCloseTo(0.6, within(1e-12));
    }

    /** It was said to have begun three minutes before it did, and seven kilometres away. */
    @Test
    void actHardlyBeginsFarFromItsPlace() {
        double there = begun();
        outside.isAtStart(0.001);
        assertThat(there).isGreaterThan(0.001);
        assertThat(begun()).isLessThan(there / 100);
    }

    /** Once in 2,000 s. */
    @Test
    void actBeginsUnheardOnlyIfItMay() {
        Belief before = new Belief(bins);
        before.before = 1;
        Belief then = new Belief(bins);
        outside.step(before, then);
        assertThat(then.unplanned()).isZero();
        outside.isHeardLate();
        then.clear();
        outside.step(before, then);
        assertThat(then.unplanned()).isCloseTo(0.1 / 2000, within(1e-12));
        then.settle(0, 0, 0);
        assertThat(then.before + then.unplanned() + then.in(0)).isCloseTo(1, within(1e-12));
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
