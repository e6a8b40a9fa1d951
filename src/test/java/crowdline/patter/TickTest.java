package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class TickTest {
    @Test
    void secondsBecomeTenthsAndBack() {
        assertThat(Tick.at(12.34)).isEqualTo(123);
        assertThat(Tick.at(-12.34)).isEqualTo(-123);
        assertThat(Tick.up(12.31)).isEqualTo(124);
        assertThat(Tick.up(12.3)).isEqualTo(123);
        assertThat(Tick.seconds(123)).isEqualTo(12.3);
        assertThat(Tick.at(1e7)).isEqualTo(100_000_000);
    }

    @Test
    void aTimeThatIsNoneIsRefusedWithItsValue() {
        for (double none : new double[] {1e9, -1e9, 1e300, Double.NaN, Double.POSITIVE_INFINITY}) {
            String said = "a time to plan by is " + none
                    + " s; it must be a number from -10,000,000 to 10,000,000 s, so check the times of the act and its"
                    + " remarks";
            assertThatIllegalArgumentException().isThrownBy(() -> Tick.at(none)).withMessage(said);
            assertThatIllegalArgumentException().isThrownBy(() -> Tick.up(none)).withMessage(said);
        }
    }
}
