package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against SCOWL: words of sizes 10 to 40 are in the list, words of size 60 and above are not. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CommonVocabularyTest {
    private final CommonVocabulary common = new CommonVocabulary();

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
        assertThat(common.has(word)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"empennage", "dihedral", "sesquipedalian", "lomcovak", "zymurgy", "aa"})
    void otherWords(String word) {
        assertThat(common.has(word)).isFalse();
    }

    @Test
    void compoundsAndEndingsAreKnownByTheirParts() {
        assertThat(common.has("henhouse")).isTrue();
        assertThat(common.has("decker")).isTrue();
        assertThat(common.has("zymurgers")).isFalse();
        assertThat(common.has("cloudily")).as("cloudy").isTrue();
        assertThat(common.has("zymurgily")).isFalse();
        assertThat(common.has("skyjet")).as("of three letters and three").isTrue();
        assertThat(common.has("zymjet")).isFalse();
    }
}
