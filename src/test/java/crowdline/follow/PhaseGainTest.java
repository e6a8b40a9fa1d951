package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** How many fifths of a second of a figure go by in a tenth. */
class PhaseGainTest {
    private static final Offset<Double> EXACTLY = within(1e-12);

    private static double mean(double[] p) {
        return IntStream.range(0, p.length).mapToDouble(k -> k * p[k]).sum();
    }

    private static double variance(double[] p) {
        double square =
                IntStream.range(0, p.length).mapToDouble(k -> k * k * p[k]).sum();
        return square - mean(p) * mean(p);
    }

    @Test
    void varianceIsNeverLessThanWholeBinsAllowNorMoreThanIsUseful() {
        assertThat(variance(PhaseGain.kernel(0.5, 0.1))).isCloseTo(0.25, EXACTLY);
        assertThat(variance(PhaseGain.kernel(0.5, 9))).isCloseTo(0.75, EXACTLY);
        assertThat(PhaseGain.kernel(0.1, 9))
                .as("all that moves moves two")
                .containsExactly(new double[] {0.95, 0, 0.05, 0, 0}, EXACTLY);
    }

    @Test
    void itGoesOnAtLeastALittleAndNoFasterThanABinAStep() {
        assertThat(mean(PhaseGain.kernel(0, 0.3))).isCloseTo(0.05, EXACTLY);
        assertThat(mean(PhaseGain.kernel(7, 0.3))).isCloseTo(1, EXACTLY);
        assertThat(mean(PhaseGain.elastic(7))).isCloseTo(1, EXACTLY);
    }

    @Test
    void lineThatIsDrawnOutGoesOnAsFastOnTheWhole() {
        double[] p = PhaseGain.elastic(0.5);
        assertThat(IntStream.range(0, p.length).mapToDouble(k -> p[k]).sum()).isCloseTo(1, EXACTLY);
        assertThat(mean(p)).isCloseTo(0.5, EXACTLY);
        assertThat(p[4]).isPositive();
    }

    /** A timed figure flown at half its speed, then a straight one at its own. */
    @Test
    void eachFigureGoesOnAtItsOwnRateAndTempo() {
        Bins bins = Small.betweenTimed(200, 50, 200).bins;
        PhaseGain gain = new PhaseGain(bins, new double[] {0.5, 1, 1}, new double[] {0.01, 0.01, 0.02});
        for (int tempo = 0; tempo < Lanes.TEMPOS; tempo++) {
            for (int direction = 0; direction < 2; direction++) {
                int lane = Lanes.of(direction, tempo);
                double perStep = 0.5 * Lanes.tempo(lane);
                assertThat(mean(gain.of(lane, 10))).isCloseTo(0.5 * perStep, EXACTLY);
                assertThat(mean(gain.of(lane, 220))).isCloseTo(perStep, EXACTLY);
            }
        }
        assertThat(bins.elastic[220]).isTrue();
        assertThat(gain.of(0, 220)).as("a line may be cut short").isEqualTo(PhaseGain.elastic(0.43));
        assertThat(variance(gain.of(Lanes.of(0, 1), 300)))
                .as("the wider its band, the less certain: 0.02 s² a second is 0.05 bins² a step, and the least more")
                .isCloseTo(0.25, EXACTLY);
    }

    @Test
    void wideBandIsWide() {
        Bins bins = Small.betweenTimed(200, 50, 200).bins;
        double[] rates = {1, 1, 1};
        PhaseGain gain = new PhaseGain(bins, rates, new double[] {0.16, 0.16, 0.16});
        assertThat(variance(gain.of(Lanes.of(0, 1), 10))).isCloseTo(0.16 * 0.1 / 0.04, EXACTLY);
    }
}
