package crowdline.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoundexTest {
    /**
     * The examples of "The Soundex Indexing System", US National Archives, and of D. E. Knuth, The Art of Computer Programming,
     * volume 3, chapter 6; from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "Washington, W252", "Lee, L000", "Gutierrez, G362", "Pfister, P236", "Jackson, J250", "Tymczak, T522",
        "VanDeusen, V532", "Ashcraft, A261", "Euler, E460", "Gauss, G200", "Hilbert, H416", "Knuth, K530",
        "Lloyd, L300", "Lukasiewicz, L222", "Ellery, E460", "Ghosh, G200", "Heilbronn, H416", "Kant, K530",
        "Ladd, L300", "Lissajous, L222"
    })
    void wordsHaveTheCodesPublished(String word, String code) {
        assertThat(Soundex.of(word)).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({
        "qban, cuban",
        "nife, knife",
        "tale, tail",
        "torc, torque",
        "dairy, derry",
        "lupe, loop",
        "shandel, chandelle"
    })
    void whatIsWrittenByEarHasTheKeyOfWhatWasHeard(String written, String heard) {
        assertThat(Soundex.key(written)).isEqualTo(Soundex.key(heard));
    }

    @Test
    void whatHasNoLettersHasNoSound() {
        assertThat(Soundex.of("1.7")).isEmpty();
        assertThat(Soundex.key("\u00e9\u0416")).isEmpty();
        assertThat(Soundex.key("loop")).isNotEqualTo(Soundex.key("spin"));
    }
}
