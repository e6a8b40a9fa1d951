package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.sheet.RunningSheet;
import org.junit.jupiter.api.Test;

class SecondsTest {
    @Test
    void whatSomethingLastsIsToldToTheNearestMinute() {
        assertThat(Seconds.toTheMinute(289)).isEqualTo("5 min");
        assertThat(Seconds.toTheMinute(269)).isEqualTo("4 min");
        assertThat(Seconds.toTheMinute(59 * 60 + 40)).isEqualTo("1 h 00 min");
        assertThat(Seconds.toTheMinute(59.7)).isEqualTo("1 min");
        assertThat(Seconds.toTheMinute(45)).isEqualTo("45 s");
    }

    /** The screen and the paper beside it name the same second. */
    @Test
    void whatIsPlannedIsWrittenAsOnPaper() {
        for (double s = 0; s < 700; s += 0.35) {
            assertThat(Seconds.planned(s)).isEqualTo(RunningSheet.minutes(s));
        }
        assertThat(Seconds.planned(31.6)).isEqualTo("0:32");
    }

    @Test
    void minutesThatHavePassedAreWholeOnes() {
        assertThat(Seconds.minutes(289)).isEqualTo("4 min");
        assertThat(Seconds.minutes(3700)).isEqualTo("1 h 01 min");
    }
}
