package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against SCOWL: words of sizes 10 to 40 are in the list, words of size 60 and above are not. */
class CommonVocabularyTest {
    private static final CommonVocabulary COMMON = new CommonVocabulary();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a",
                "aardvark",
                "the",
                "Aeroplane",
                "colour",
                "zoo",
                "zoos",
                "sycamore",
                "somersault",
                "flyer's",
                "flyers'",
                "don't",
                "élan",
                ""
            })
    void knownWordsAndWhatCannotBeJudged(String word) {
        assertThat(COMMON.has(word)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"empennage", "dihedral", "sesquipedalian", "lomcovak", "zymurgy", "aa"})
    void otherWords(String word) {
        assertThat(COMMON.has(word)).isFalse();
    }

    @Test
    void compoundsAndEndingsAreKnownByTheirParts() {
        assertThat(COMMON.has("henhouse")).isTrue();
        assertThat(COMMON.has("decker")).isTrue();
        assertThat(COMMON.has("zymurgers")).isFalse();
    }
}
