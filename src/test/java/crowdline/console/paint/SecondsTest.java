package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

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

    @Test
    void minutesThatHavePassedAreWholeOnes() {
        assertThat(Seconds.minutes(289)).isEqualTo("4 min");
        assertThat(Seconds.minutes(3700)).isEqualTo("1 h 01 min");
    }
}
