package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.patter.Fit;
import org.junit.jupiter.api.Test;

class SpareTest {
    @Test
    void noughtSecondsAreNeverSaid() {
        assertThat(Spare.of(Fit.FITS, 4.9).word()).isEqualTo("Fits, 4 s to spare");
        assertThat(Spare.of(Fit.FITS, 0.9).word()).isEqualTo("Fits");
        assertThat(Spare.of(Fit.FITS, -0.1).word()).isEqualTo("Fits");
        assertThat(Spare.of(Fit.JUST_FITS, 0).word()).isEqualTo("Just fits");
        assertThat(Spare.of(Fit.RUNS_OVER, 0).word()).isEqualTo("Runs over by 1 s");
        assertThat(Spare.of(Fit.TOO_LONG, -2.2).word()).isEqualTo("Too long by 3 s");
    }

    @Test
    void aFigureIsOverFromTheFirstWholeSecondOn() {
        assertThat(Spare.over(0.4, "0.0 s")).isEqualTo("0.0 s");
        assertThat(Spare.over(0.5, "0.0 s")).isEqualTo("1 s over");
        assertThat(Spare.over(11.2, "0.0 s")).isEqualTo("11 s over");
    }
}
