package crowdline.flight.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PullCurveTest {
    private final PullCurve falling = new PullCurve(x -> Math.exp(-x));

    /** A cubic with the slopes at both its ends is off by h⁴ / 384 of the fourth derivative at most, which is 1 here. */
    @Test
    void betweenItsRowsItIsAsNearAsACubicIs() {
        double most = 0;
        for (double x = 0; x < 16; x += 0.0013) {
            most = Math.max(most, Math.abs(falling.at(x) - Math.exp(-x)));
        }
        assertThat(most).isBetween(1e-10, Math.pow(32, -4) / 384 + 1e-10);
    }

    @Test
    void whatLiesBeyondItIsComputed() {
        assertThat(falling.at(17.01)).isEqualTo(Math.exp(-17.01));
    }

    @Test
    void itNeitherJumpsNorBendsAtItsEnd() {
        assertThat(falling.at(16)).isCloseTo(falling.at(16 - 1e-9), within(1e-9 * Math.exp(-16) + 1e-15));
    }
}
