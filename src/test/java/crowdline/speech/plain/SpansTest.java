package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class SpansTest {

    @Test
    void partOfATextMayBeEmptyButNotEndBeforeItBegins() {
        assertThat(new TextSpan(2, 2).in("loop")).isEmpty();
        assertThat(new TextSpan(0, 4).in("loop")).isEqualTo("loop");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TextSpan(2, 1))
                .withMessage("a span needs 0 <= from <= to, but got from 2 to 1");
        assertThatIllegalArgumentException().isThrownBy(() -> new TextSpan(-1, 1));
    }

    @Test
    void findingPointsAtAPartOfItsText() {
        assertThat(new SpeechFinding("code", "message", 0, 0, null).toChar()).isZero();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SpeechFinding("code", "message", 2, 1, null))
                .withMessage("a finding needs 0 <= from <= to, but got from 2 to 1");
        assertThatIllegalArgumentException().isThrownBy(() -> new SpeechFinding("code", "message", -1, 1, null));
    }
}
