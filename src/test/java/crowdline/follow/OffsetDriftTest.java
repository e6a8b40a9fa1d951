package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A level figure and a climb of 30 m/s. */
class OffsetDriftTest {
    private static final int LEVEL = 20;
    private static final int CLIMB = 70;

    private final OffsetDrift drift = new OffsetDrift(Small.plan(50, 40).bins);

    /** What a tenth of a second adds to the variance of an offset, square metres. */
    private double adds(int bin, int offset) {
        Moments m = Moments.of(1, 100, 100);
        drift.step(m, bin);
        return m.variance(offset) - 100;
    }

    @Test
    void placeWandersAlongTheAxisByEightMetresInASecond() {
        assertThat(adds(LEVEL, Moments.ALONG)).isCloseTo(6.4, within(0.1));
    }

    @Test
    void climbMakesPlaceAndHeightLessCertain() {
        assertThat(adds(CLIMB, Moments.ALONG)).isCloseTo(6.4 + 12, within(0.5));
        assertThat(adds(CLIMB, Moments.HEIGHT)).isCloseTo(12, within(0.5));
        assertThat(adds(LEVEL, Moments.HEIGHT)).isCloseTo(0, within(0.1));
    }

    /** 70 m in either direction. */
    @Test
    void nextFigureMayBeginSomewhereElse() {
        Moments m = Moments.of(0.5, 100, 50);
        OffsetDrift.next(m);
        assertThat(m.variance(Moments.ALONG)).isCloseTo(100 + 4900, within(1e-9));
        assertThat(m.variance(Moments.HEIGHT)).isCloseTo(50 + 4900, within(1e-9));
    }

    @Test
    void whatIsBelievedOfTheSpeedIsLostInTwentySeconds() {
        Moments m = Moments.of(1, 100, 100);
        m.parts[Moments.FASTER] = 0.1;
        for (int i = 0; i < 200; i++) {
            drift.step(m, LEVEL);
        }
        assertThat(m.mean(Moments.FASTER)).isCloseTo(0.1 / Math.E, within(1e-6));
    }
}
