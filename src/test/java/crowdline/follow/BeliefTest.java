package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Two figures of 50 and 40 bins of which the path is known. */
class BeliefTest {
    private final Bins bins = Small.plan(50, 40).bins;
    private final Belief belief = new Belief(bins);

    private void add(int lane, int bin, double chance) {
        belief.add(lane, bin, Moments.of(chance, 100, 50), 1);
    }

    @Test
    void chancesAddUpToOne() {
        add(0, 10, 1);
        add(4, 60, 3);
        belief.off = 2;
        belief.offGently = 1;
        belief.before = 0.5;
        belief.after = 0.5;
        assertThat(belief.settle(0, 0, 0)).isTrue();
        assertThat(belief.in(0)).isEqualTo(0.125);
        assertThat(belief.in(1)).isEqualTo(0.375);
        assertThat(belief.in(4, 1)).isEqualTo(0.375);
        assertThat(belief.in(0, 1)).isZero();
        assertThat(belief.unplanned()).isEqualTo(0.375);
        assertThat(belief.before).isEqualTo(0.0625);
        assertThat(belief.after).isEqualTo(0.0625);
        int state = belief.state(4, 60);
        assertThat(belief.chance[state]).isEqualTo(0.375);
        assertThat(belief.moment(state, Moments.ALONG + 1))
                .as("what is believed goes with it")
                .isCloseTo(37.5, within(1e-9));
    }

    @Test
    void secondHalfOfAFigureIsCountedApart() {
        add(0, 24, 0.2);
        add(1, 25, 0.3);
        add(1, 89, 0.5);
        belief.settle(0, 0, 0);
        assertThat(belief.late(0)).isEqualTo(0.3);
        assertThat(belief.late(1)).isEqualTo(0.5);
    }

    /** Twice as much as a chance can be: what is left out is counted after it is halved. */
    @Test
    void halvesAndWhatIsForgottenAreCountedOnceAllAddsUpToOne() {
        add(0, 24, 0.4);
        add(0, 26, 0.6);
        add(0, 28, 0.015);
        belief.off = 0.985;
        belief.settle(0, 0.01, 0);
        assertThat(belief.late(0)).isCloseTo(0.3075, within(1e-12));
        assertThat(belief.high[0]).as("0.0075 is too little").isEqualTo(26);
    }

    @Test
    void chancesThatNearlyAddUpToOneAreLeftAsTheyAre() {
        belief.off = 0.9995;
        belief.settle(0, 0, 0);
        assertThat(belief.off).isEqualTo(0.9995);
        belief.off = 1.0005;
        belief.settle(0, 0, 0);
        assertThat(belief.off).isEqualTo(1.0005);
        belief.off = 1.002;
        belief.settle(0, 0, 0);
        assertThat(belief.off).isCloseTo(1, within(1e-12));
    }

    @Test
    void figureTooUnlikelyIsForgottenAsAWhole() {
        add(0, 10, 0.004);
        add(0, 11, 0.004);
        add(0, 60, 0.992);
        belief.settle(0.01, 0, 0);
        assertThat(belief.in(0)).isZero();
        assertThat(belief.chance[belief.state(0, 10)]).isZero();
        assertThat(belief.cells[belief.state(0, 11) * Moments.WIDTH + 1]).isZero();
        assertThat(belief.low[0]).as("nothing is in use").isGreaterThan(belief.high[0]);
        assertThat(belief.in(1)).isEqualTo(0.992);
    }

    @Test
    void statesTooUnlikelyAreForgottenAndTheRestIsBetweenTheNewEdges() {
        add(0, 10, 0.001);
        add(0, 12, 0.5);
        add(0, 14, 0.001);
        add(0, 16, 0.4);
        add(0, 18, 0.098);
        belief.settle(0, 0.01, 0);
        assertThat(belief.low[0]).isEqualTo(12);
        assertThat(belief.high[0]).isEqualTo(18);
        assertThat(belief.chance[belief.state(0, 14)]).isZero();
        belief.settle(0, 0, 0.5);
        assertThat(belief.high[0]).as("less than half of the likeliest").isEqualTo(16);
    }

    @Test
    void whatIsLeftOfNothingCannotBeScaled() {
        assertThat(belief.settle(0, 0, 0)).isFalse();
        belief.off = Double.NaN;
        assertThat(belief.settle(0, 0, 0)).isFalse();
        belief.off = Double.POSITIVE_INFINITY;
        assertThat(belief.settle(0, 0, 0)).isFalse();
    }

    @Test
    void whereNothingIsKnownOfDirectionAndTempoEachIsAsLikelyAsItIsFlown() {
        belief.addInAnyLane(60, Moments.of(1, 100, 50), 1);
        belief.settle(0, 0, 0);
        assertThat(belief.in(1)).isCloseTo(1, within(1e-12));
        assertThat(belief.in(Lanes.of(0, 1), 1)).isCloseTo(0.3, within(1e-12));
        assertThat(belief.in(Lanes.of(1, 1), 1)).isCloseTo(0.3, within(1e-12));
        assertThat(belief.in(Lanes.of(0, 0), 1)).isCloseTo(0.1, within(1e-12));
        assertThat(belief.in(Lanes.of(1, 2), 1)).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void clearedBeliefIsEmpty() {
        add(3, 10, 1);
        belief.before = 1;
        belief.off = 1;
        belief.offGently = 1;
        belief.after = 1;
        belief.settle(0, 0, 0);
        belief.clear();
        assertThat(belief.chance).containsOnly(0);
        assertThat(belief.cells).containsOnly(0);
        assertThat(belief.in(0)).isZero();
        assertThat(belief.before + belief.unplanned() + belief.after).isZero();
        assertThat(belief.settle(0, 0, 0)).isFalse();
    }

    /** Of a figure that is only timed nothing is believed but when. */
    @Test
    void onlyTimedStatesHaveNoOffsets() {
        Bins timed = Small.betweenTimed(200, 50, 200).bins;
        Belief ofTimed = new Belief(timed);
        ofTimed.add(0, 10, Moments.of(1, 100, 50), 1);
        ofTimed.scale(ofTimed.state(0, 10), true, 0.5);
        assertThat(ofTimed.chance[10]).isEqualTo(0.5);
        assertThat(ofTimed.cells).containsOnly(0);
    }
}
