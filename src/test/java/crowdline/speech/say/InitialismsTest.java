package crowdline.speech.say;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InitialismsTest {

    @ParameterizedTest
    @ValueSource(strings = {"BBC", "VHF", "DJ", "PPRT"})
    void withoutAVowelThereIsNoOtherWay(String word) {
        assertThat(Initialisms.isSpelled(word, false)).isTrue();
        assertThat(Initialisms.isSpelled(word, true)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"RAF", "UK", "USAF", "XY"})
    void withOneItIsSpelledUnlessTheTextShouts(String word) {
        assertThat(Initialisms.isSpelled(word, false)).isTrue();
        assertThat(Initialisms.isSpelled(word, true)).isFalse();
    }

    /** Titles, words that are always said as one, words that only shout, and those too long to spell. */
    @ParameterizedTest
    @ValueSource(strings = {"MR", "MRS", "DR", "ST", "NATO", "LOOK", "ALTAR"})
    void wordsAreWords(String word) {
        assertThat(Initialisms.isSpelled(word, false)).isFalse();
        assertThat(Initialisms.isSpelled(word, true)).isFalse();
    }
}
