package crowdline.speech.say;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** ICU, whose rules are the Unicode consortium's, spells the same numbers another way. */
class NumberWordsTest {

    private static final RuleBasedNumberFormat ICU =
            new RuleBasedNumberFormat(ULocale.UK, RuleBasedNumberFormat.SPELLOUT);

    /** Every number to 100,000, both sides of every power of ten, and 20,000 larger ones, half with noughts in the middle. */
    private static LongStream numbers() {
        SplittableRandom random = new SplittableRandom(85);
        LongStream edges = LongStream.iterate(10, x -> x * 10)
                .limit(11)
                .flatMap(x -> LongStream.rangeClosed(x - 3, Math.min(x + 101, NumberWords.LARGEST)));
        LongStream spread = LongStream.generate(() -> random.nextLong((long) Math.pow(10, random.nextInt(5, 13))))
                .map(x -> random.nextBoolean() ? x : x / 1000 * 1000 + random.nextInt(3))
                .map(x -> Math.min(x, NumberWords.LARGEST))
                .limit(20_000);
        return LongStream.concat(LongStream.rangeClosed(0, 100_000), LongStream.concat(edges, spread));
    }

    @Test
    void cardinalsAreSpelledAsIcuSpellsThem() {
        numbers()
                .forEach(n ->
                        assertThat(NumberWords.cardinal(n)).isEqualTo(ICU.format(n, "%spellout-numbering-verbose")));
    }

    @Test
    void ordinalsAreSpelledAsIcuSpellsThem() {
        numbers()
                .forEach(n -> assertThat(NumberWords.ordinal(n)).isEqualTo(ICU.format(n, "%spellout-ordinal-verbose")));
    }

    /** But for 2001 to 2009, which are "two thousand five" to ICU, as Americans say. */
    @Test
    void yearsAreSaidAsIcuSaysThem() {
        SpelledNumbers words = new SpelledNumbers();
        for (int year = 1000; year < 10_000; year++) {
            String expected = ICU.format(year, "%spellout-numbering-year");
            boolean american = year % 1000 > 0 && year % 1000 < 10;
            assertThat(words.year(year))
                    .isEqualTo(american ? expected.replace("thousand ", "thousand and ") : expected);
        }
    }

    @Test
    void theLargestNumberHasWordsAndTheNextHasNone() {
        assertThat(NumberWords.cardinal(NumberWords.LARGEST))
                .isEqualTo("nine hundred and ninety-nine billion, nine hundred and ninety-nine million, "
                        + "nine hundred and ninety-nine thousand, nine hundred and ninety-nine");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NumberWords.ordinal(NumberWords.LARGEST + 1))
                .withMessage("only numbers from 0 to 999999999999 have words, but got 1000000000000");
    }

    @ParameterizedTest
    @ValueSource(longs = {-1, Long.MIN_VALUE, Long.MAX_VALUE})
    void otherNumbersHaveNoWords(long number) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NumberWords.cardinal(number))
                .withMessageContaining(String.valueOf(number));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"0 | zeroth", "12 | twelfth", "20 | twentieth", "180 | one hundred and eightieth"})
    void ordinalsAreSaidAsAReaderSaysThem(long number, String words) {
        assertThat(NumberWords.ordinal(number)).isEqualTo(words);
    }
}
