package crowdline.console.incident;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ResumeWordTest {
    private final ResumeWord word = new ResumeWord();

    private boolean type(String letters) {
        boolean complete = false;
        for (int i = 0; i < letters.length(); i++) {
            complete = word.type(letters.charAt(i));
        }
        return complete;
    }

    @Test
    void theWholeWordLeaves() {
        assertThat(type("resume")).isTrue();
    }

    @Test
    void capitalsCountTheSame() {
        assertThat(type("ReSuMe")).isTrue();
    }

    @Test
    void aWrongLetterBeginsAgain() {
        assertThat(type("resxume")).isFalse();
        assertThat(word.right()).isZero();
    }

    @Test
    void aWrongLetterThatIsTheFirstCounts() {
        assertThat(type("reresume")).isTrue();
    }

    @Test
    void whatRemotesAndPedalsTypeNeverLeaves() {
        assertThat(type(" .\n\u001b\b     ....")).isFalse();
        assertThat(word.right()).isZero();
    }
}
