package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class NormalBeliefTest {
    /** Wing lengths of nine midges, Hoff 2009, section 5.3, and the prior of the same place. */
    private static final double[] MIDGES = {1.64, 1.70, 1.72, 1.74, 1.82, 1.82, 1.82, 1.90, 2.08};

    private static final NormalBelief MIDGE_PRIOR = NormalBelief.guess(1.9, 1, 0.1, 1);

    /** What n values with a known mean and standard deviation leave behind if nothing was believed before. */
    private static NormalBelief seen(int n, double mean, double standardDeviation) {
        return new NormalBelief(mean, n, n - 1, (n - 1) * standardDeviation * standardDeviation);
    }

    private static NormalBelief after(NormalBelief belief, double... values) {
        for (double value : values) {
            belief = belief.update(value);
        }
        return belief;
    }

    @Test
    void agreesWithMontgomeryAndRungersPredictionInterval() {
        // Montgomery & Runger, Applied Statistics and Probability for Engineers, Example 8-8: n = 22, mean 13.71,
        // s = 3.55, 95 % prediction interval 6.16 to 21.26.
        Band band = seen(22, 13.71, 3.55).predict(0.95);
        assertThat(band.low()).isCloseTo(6.16, within(0.006));
        assertThat(band.high()).isCloseTo(21.26, within(0.006));
    }

    @Test
    void agreesWithTheConcreteExample() {
        // Course notes at gradebuddy.com/doc/43292: n = 10, mean 1312, s = 25; the next value 1312 ± 59.
        Band band = seen(10, 1312, 25).predict(0.95);
        assertThat(band.low()).isCloseTo(1312 - 59, within(0.5));
        assertThat(band.high()).isCloseTo(1312 + 59, within(0.5));
    }

    @Test
    void agreesWithEnvStats() {
        // S. P. Millard, EnvStats for R, help page of predIntNorm: n = 20, mean 9.792856, sd 1.821286;
        // 5.886723 to 13.698988.
        Band band = seen(20, 9.792856, 1.821286).predict(0.95);
        assertThat(band.low()).isCloseTo(5.886723, within(5e-6));
        assertThat(band.high()).isCloseTo(13.698988, within(5e-6));
    }

    @Test
    void agreesWithTheUpperLimitOfTheEnvironmentalProtectionAgency() {
        // US EPA, Statistical Analysis of Groundwater Monitoring Data, Unified Guidance (2009), Example 18-1, as in the
        // help page of predIntNorm: one-sided 95 % limit for the next four values, Bonferroni: 73.67237.
        NormalBelief belief =
                after(NormalBelief.NOTHING, 12.6, 30.8, 52.0, 28.1, 33.3, 44.0, 3.0, 12.8, 58.1, 12.6, 17.6, 25.3);
        assertThat(belief.mean()).isCloseTo(27.51667, within(5e-6));
        assertThat(belief.standardDeviation()).isCloseTo(17.10119, within(5e-6));
        assertThat(belief.quantile(1 - 0.05 / 4)).isCloseTo(73.67237, within(5e-5));
    }

    @Test
    void agreesWithHoffsMidges() {
        // Hoff 2009, section 5.3: posterior weights 10 and 10, mean 1.814, variance 0.015.
        NormalBelief belief = after(MIDGE_PRIOR, MIDGES);
        assertThat(belief.weight()).isEqualTo(10);
        assertThat(belief.freedom()).isEqualTo(10);
        assertThat(belief.mean()).isCloseTo(1.814, within(0.0005));
        assertThat(belief.standardDeviation() * belief.standardDeviation()).isCloseTo(0.015, within(0.0005));
    }

    @Test
    void oneAtATimeIsTheSameAsAllAtOnce() {
        // All at once by Hoff 2009, equations of section 5.3.
        int n = MIDGES.length;
        double mean = DoubleStream.of(MIDGES).average().orElseThrow();
        double squares =
                DoubleStream.of(MIDGES).map(y -> (y - mean) * (y - mean)).sum();
        double deviation = mean - 1.9;
        double batchSquares = 0.01 + squares + 1.0 * n / (1 + n) * deviation * deviation;

        NormalBelief belief = after(MIDGE_PRIOR, MIDGES);

        assertThat(belief.mean()).isCloseTo((1.9 + n * mean) / (1 + n), within(1e-12));
        assertThat(belief.sumOfSquares()).isCloseTo(batchSquares, within(1e-12));
    }

    @Test
    void orderDoesNotMatter() {
        NormalBelief forward = after(MIDGE_PRIOR, 1.64, 2.08, 1.7);
        NormalBelief backward = after(MIDGE_PRIOR, 1.7, 2.08, 1.64);
        assertThat(forward.mean()).isCloseTo(backward.mean(), within(1e-12));
        assertThat(forward.sumOfSquares()).isCloseTo(backward.sumOfSquares(), within(1e-12));
    }

    @Test
    void ignoranceWithDataIsTheClassicalInterval() {
        // Factor t sqrt(1 + 1/n) for n = 3 at 80 %: t(0.90; 2) = 1.8856 in every table of Student's t.
        Band band = seen(3, 0, 1).predict(0.8);
        assertThat(band.high()).isCloseTo(1.8856 * Math.sqrt(1 + 1.0 / 3), within(1e-4));
        assertThat(band.low()).isCloseTo(-band.high(), within(1e-12));
    }

    @Test
    void predictiveVarianceIsThatOfDraws() {
        // Draws from the posterior and then from the normal: no use of Student's t anywhere.
        NormalBelief belief = new NormalBelief(2, 3, 8, 10);
        Random random = new Random(7);
        double[] drawn = new double[400_000];
        for (int i = 0; i < drawn.length; i++) {
            double chiSquared = 0;
            for (int k = 0; k < 8; k++) {
                chiSquared += Math.pow(random.nextGaussian(), 2);
            }
            double variance = 10 / chiSquared;
            double mean = 2 + Math.sqrt(variance / 3) * random.nextGaussian();
            drawn[i] = mean + Math.sqrt(variance) * random.nextGaussian();
        }
        // K. P. Murphy, Conjugate Bayesian analysis of the Gaussian distribution (2007): variance of the t is
        // scale² ν / (ν − 2) = (10 / 8)(1 + 1/3)(8 / 6) = 2.2222.
        double middle = DoubleStream.of(drawn).average().orElseThrow();
        double spread = DoubleStream.of(drawn)
                .map(x -> (x - middle) * (x - middle))
                .average()
                .orElseThrow();
        assertThat(spread).isCloseTo(2.2222, within(0.03));
        double inside = belief.predict(0.8).high() - 2;
        assertThat(inside).isCloseTo(1.3968 * Math.sqrt(10.0 / 8 * (4.0 / 3)), within(1e-3)); // t(0.90; 8) = 1.397
    }

    /** However a value is cut into shares, together they teach what it teaches whole. */
    @Test
    void twoHalvesOfAValueAreWorthTheWhole() {
        NormalBelief whole = MIDGE_PRIOR.update(1.7);
        NormalBelief halves = MIDGE_PRIOR.update(1.7, 0.5).update(1.7, 0.5);

        assertThat(halves.mean()).isCloseTo(whole.mean(), within(1e-12));
        assertThat(halves.weight()).isCloseTo(whole.weight(), within(1e-12));
        assertThat(halves.freedom()).isCloseTo(whole.freedom(), within(1e-12));
        assertThat(halves.sumOfSquares()).isCloseTo(whole.sumOfSquares(), within(1e-12));
    }

    @Test
    void predictsFromTheSecondOfTwoUnlikeValuesOn() {
        assertThat(NormalBelief.NOTHING.predicts()).isFalse();
        assertThat(after(NormalBelief.NOTHING, 3).predicts()).isFalse();
        assertThat(after(NormalBelief.NOTHING, 3, 3).predicts()).isFalse();
        assertThat(after(NormalBelief.NOTHING, 3, 4).predicts()).isTrue();
    }

    @Test
    void spreadOfNothingIsNoNumber() {
        assertThat(NormalBelief.NOTHING.standardDeviation()).isNaN();
        assertThat(after(NormalBelief.NOTHING, 3).standardDeviation()).isNaN();
        assertThat(after(NormalBelief.NOTHING, 3, 4).standardDeviation()).isCloseTo(Math.sqrt(0.5), within(1e-12));
    }

    @Test
    void certaintyIsNoChance() {
        NormalBelief belief = MIDGE_PRIOR;
        assertThatThrownBy(() -> belief.quantile(0)).hasMessage("the chance is 0.0; it must be above 0 and below 1");
        assertThatThrownBy(() -> belief.quantile(1)).hasMessage("the chance is 1.0; it must be above 0 and below 1");
    }

    @Test
    void valueCountsForMoreThanNothingAndAtMostWhole() {
        assertThatThrownBy(() -> MIDGE_PRIOR.update(1.8, 0))
                .hasMessage("the share is 0.0; it must be above 0 and at most 1");
        assertThatThrownBy(() -> MIDGE_PRIOR.update(1.8, 1.1))
                .hasMessage("the share is 1.1; it must be above 0 and at most 1");
        assertThatThrownBy(() -> MIDGE_PRIOR.update(Double.NaN)).hasMessage("the value is NaN; it must be a number");
    }

    @Test
    void ignoranceRefusesToPredict() {
        assertThatThrownBy(() -> NormalBelief.NOTHING.update(3).quantile(0.5))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("too little is known");
    }
}
