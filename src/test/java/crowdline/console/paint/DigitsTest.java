package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DigitsTest {
    @Test
    void noMoreDigitsAreOfferedThanThereAreLines() {
        assertThat(Digits.upTo(1, "open")).isEqualTo("1 opens");
        assertThat(Digits.upTo(2, "open")).isEqualTo("1 or 2 open");
        assertThat(Digits.upTo(6, "answer")).isEqualTo("1 to 6 answer");
    }
}
