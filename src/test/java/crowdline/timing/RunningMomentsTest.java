package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Data sets and certified values: NIST Statistical Reference Datasets, univariate summary statistics. */
class RunningMomentsTest {
    private static RunningMoments of(double... values) {
        RunningMoments moments = RunningMoments.NONE;
        for (double value : values) {
            moments = moments.with(value);
        }
        return moments;
    }

    /** NumAcc2 to NumAcc4: the centre once, then 1000 values a tenth below and above in turn. */
    private static RunningMoments numAcc(double whole) {
        RunningMoments moments = RunningMoments.NONE.with(whole + 0.2);
        for (int i = 0; i < 500; i++) {
            moments = moments.with(whole + 0.1).with(whole + 0.3);
        }
        return moments;
    }

    @Test
    void numAcc1IsExact() {
        RunningMoments moments = of(10000001, 10000003, 10000002);
        assertThat(moments.mean()).isEqualTo(10000002);
        assertThat(moments.standardDeviation()).isEqualTo(1);
    }

    @Test
    void numAcc2HoldsFourteenDigits() {
        RunningMoments moments = numAcc(1);
        assertThat(moments.count()).isEqualTo(1001);
        assertThat(moments.mean()).isCloseTo(1.2, within(1e-14));
        assertThat(moments.standardDeviation()).isCloseTo(0.1, within(1e-14));
    }

    @Test
    void numAcc3HoldsWhatTheInputHolds() {
        // A double near a million keeps 1e-10; the standard deviation cannot be better than that.
        RunningMoments moments = numAcc(1_000_000);
        assertThat(moments.mean()).isCloseTo(1_000_000.2, within(1e-9));
        assertThat(moments.standardDeviation()).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void numAcc4HoldsWhereSumOfSquaresFails() {
        RunningMoments moments = numAcc(10_000_000);
        assertThat(moments.mean()).isCloseTo(10_000_000.2, within(1e-8));
        assertThat(moments.standardDeviation()).isCloseTo(0.1, within(1e-8));

        double sum = 10_000_000.2;
        double squares = 10_000_000.2 * 10_000_000.2;
        for (int i = 0; i < 500; i++) {
            sum += 10_000_000.1 + 10_000_000.3;
            squares += 10_000_000.1 * 10_000_000.1 + 10_000_000.3 * 10_000_000.3;
        }
        double naive = Math.sqrt(Math.abs(squares - sum * sum / 1001) / 1000);
        assertThat(Math.abs(naive - 0.1)).as("why it is done this way").isGreaterThan(1e-5);
    }

    @Test
    void oneNumberHasNoSpread() {
        assertThat(of(3).standardDeviation()).isZero();
    }

    @Test
    void refusesWhatIsNotANumber() {
        assertThatThrownBy(() -> of(Double.NaN)).hasMessageContaining("NaN");
    }
}
