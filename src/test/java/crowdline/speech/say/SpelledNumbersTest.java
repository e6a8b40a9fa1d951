package crowdline.speech.say;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpelledNumbersTest {

    private static final SpelledNumbers WORDS = new SpelledNumbers();

    @ParameterizedTest
    @CsvSource({
        "1010, ten ten",
        "1100, eleven hundred",
        "1250, twelve fifty",
        "1944, nineteen forty-four",
        "2024, twenty twenty-four",
        "1066, ten sixty-six",
        // The rule set itself says "two thousand five", as Americans do.
        "2005, two thousand and five",
        "2000, two thousand"
    })
    void years(int year, String said) {
        assertThat(WORDS.year(year)).isEqualTo(said);
    }

    @Test
    void ordinalsHaveTheirAnd() {
        assertThat(WORDS.ordinal(21)).isEqualTo("twenty-first");
        assertThat(WORDS.ordinal(101)).isEqualTo("one hundred and first");
    }

    @Test
    void serialNumbersAreSaidDigitByDigit() {
        assertThat(WORDS.quantity("0042")).isEqualTo("zero zero four two");
        assertThat(WORDS.quantity("1234567890123")).startsWith("one two three four");
    }

    @ParameterizedTest
    @CsvSource({"IX, 9", "IV, 4", "XXXIX, 39", "III, 3", "VIII, 8", "IIII, 0", "VX, 0", "IXI, 0", "XL, 0"})
    void romanMarks(String numeral, int value) {
        assertThat(RomanNumeral.value(numeral)).isEqualTo(value);
    }
}
