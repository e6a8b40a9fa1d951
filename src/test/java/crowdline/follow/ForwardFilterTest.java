package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The arithmetic of the filter against plain enumeration of every path through a small model. */
class ForwardFilterTest {
    private static final int STEPS = 4;

    /** A first figure too long to be left in time; nothing is seen, so only the motion speaks. */
    @Test
    void clockAloneIsTheSumOverAllPaths() {
        FollowPlan plan = Small.plan(20, 20);
        Order order = new Order(plan.bins);
        Motion motion = new Motion(plan.bins, plan.rate, plan.variance, order);
        Belief belief = new Belief(plan.bins);
        belief.add(0, 0, Moments.of(1, 1, 1), 1);
        Belief spare = new Belief(plan.bins);
        for (int i = 0; i < STEPS; i++) {
            motion.step(belief, spare, -1, false);
            Belief done = belief;
            belief = spare;
            spare = done;
        }
        double inFigures = Arrays.stream(belief.chance).sum();
        assertThat(inFigures + belief.unplanned()).isCloseTo(1, within(2e-6));
        double mean = plan.rate[0] * Lanes.tempo(0) * Motion.STEP_S / Bins.WIDTH_S;
        double variance = plan.variance[0] * Motion.STEP_S / (Bins.WIDTH_S * Bins.WIDTH_S);
        double[][] kernels = new double[12][];
        for (int bin = 0; bin < 12; bin++) {
            kernels[bin] = plan.bins.elastic[bin] ? PhaseGain.elastic(mean) : PhaseGain.kernel(mean, variance);
        }
        for (int bin = 0; bin < 12; bin++) {
            double expected = paths(kernels, STEPS, 0, bin);
            assertThat(belief.chance[bin]).isCloseTo(expected, within(1e-3 * expected));
        }
    }

    /** Chance of getting from one bin to another in the first figure in so many steps, over every path there is. */
    private static double paths(double[][] kernels, int steps, int from, int to) {
        if (steps == 0) {
            return from == to ? 1 : 0;
        }
        double sum = 0;
        for (int k = 0; k < kernels[from].length && from + k <= to; k++) {
            double stays = 1 - Motion.OFF;
            sum += stays * kernels[from][k] * paths(kernels, steps - 1, from + k, to);
        }
        return sum;
    }

    @Test
    void kernelHasItsMeanAndVariance() {
        double[] p = PhaseGain.kernel(0.5, 0.4);
        double mean = 0;
        double square = 0;
        double sum = 0;
        for (int k = 0; k < p.length; k++) {
            sum += p[k];
            mean += k * p[k];
            square += k * k * p[k];
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
        assertThat(mean).isCloseTo(0.5, within(1e-12));
        assertThat(square - mean * mean).isCloseTo(0.4, within(1e-12));
    }
}
