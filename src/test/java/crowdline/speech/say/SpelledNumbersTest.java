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
        "2000, two thousand",
        "2009, two thousand and nine",
        "2010, twenty ten",
        "1009, one thousand and nine",
        "9999, ninety-nine ninety-nine",
        "10000, ten thousand"
    })
    void years(int year, String said) {
        assertThat(WORDS.year(year)).isEqualTo(said);
    }

    @Test
    void ordinalsHaveTheirAnd() {
        assertThat(WORDS.ordinal(21)).isEqualTo("twenty-first");
        assertThat(WORDS.ordinal(101)).isEqualTo("one hundred and first");
    }

    @ParameterizedTest
    @CsvSource({
        "7, seven",
        "99, ninety-nine",
        "100, one hundred",
        "101, one oh one",
        "109, one oh nine",
        "110, one ten",
        "800, eight hundred",
        "1052, ten fifty-two",
        "12345, one two three four five",
        "016, zero one six"
    })
    void numbersInNames(String digits, String said) {
        assertThat(WORDS.inName(digits)).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "09, 30, oh nine thirty",
        "9, 30, nine thirty",
        "14, 0, fourteen hundred",
        "14, 9, fourteen oh nine",
        "14, 10, fourteen ten",
        "00, 30, oh oh thirty",
        "0, 30, oh thirty"
    })
    void timesByTheClock(String hour, int minute, String said) {
        assertThat(WORDS.clock(hour, minute)).isEqualTo(said);
    }

    @Test
    void numberOfTwelveDigitsHasWords() {
        assertThat(WORDS.quantity("123456789012")).startsWith("one hundred and twenty-three billion");
        assertThat(WORDS.quantity("0")).isEqualTo("zero");
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
