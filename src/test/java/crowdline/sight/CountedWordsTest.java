package crowdline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.ibm.icu.text.RuleBasedNumberFormat;
import crowdline.show.CrowdUnits;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CountedWordsTest {
    /** ICU's British spelling, but for "a hundred" and "twelve hundred", which only people say. */
    @Test
    void wholeNumbersAreSpelledAsIcuSpellsThem() {
        RuleBasedNumberFormat icu = new RuleBasedNumberFormat(Locale.UK, RuleBasedNumberFormat.SPELLOUT);
        icu.setDefaultRuleSet("%spellout-cardinal-verbose");
        for (int n = 0; n <= 12_000; n++) {
            if (n > 1000 && n < 2000 && n % 100 == 0) {
                continue;
            }
            String expected = icu.format(n).replace("zero", "nought").replace(",", "");
            assertThat(CountedWords.of(n).replaceFirst("^a ", "one ")).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1200 | twelve hundred",
                "1900 | nineteen hundred",
                "2000 | two thousand",
                "1000 | a thousand",
                "180 | a hundred and eighty",
                "2.5 | two and a half",
                "0.25 | a quarter",
                "0.75 | three quarters",
                "1.5 | one and a half"
            })
    void numbersAreSaidAsPeopleSayThem(double value, String words) {
        assertThat(CountedWords.of(value)).isEqualTo(words);
    }

    @Test
    void numbersWithoutWordsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CountedWords.of(0.3))
                .withMessageContaining("0.3");
        assertThatIllegalArgumentException().isThrownBy(() -> CountedWords.of(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> CountedWords.of(Double.NaN));
    }

    static Stream<DoubleFunction<Said>> waysToSay() {
        return Stream.of(
                Said::feet,
                Said::mph,
                Said::seconds,
                x -> Said.times(x, "times"),
                x -> Said.share(x, "share"),
                x -> Said.many(x, "floor", "floors"),
                Said::kilograms,
                Said::metres,
                m -> Said.distance(m, CrowdUnits.MILES),
                m -> Said.distance(m, CrowdUnits.METRIC),
                x -> Said.speed(x, CrowdUnits.METRIC),
                m -> Said.height(m, CrowdUnits.METRIC));
    }

    /** The words are read back by a reader of their own. */
    @ParameterizedTest
    @MethodSource("waysToSay")
    void wordsSayTheRoundedNumberAndRoundingIsByHalfAStepAtMost(DoubleFunction<Said> way) {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 3000; i++) {
            double x = Math.pow(10, random.nextDouble(-1, 3.5));
            Said said = way.apply(x);
            assertThat(said.rounded()).as("%s", said).isCloseTo(said.value(), within(said.step() / 2 + 1e-9));
            assertThat(ReadBack.number(said.words())).as("%s", said).isCloseTo(said.rounded(), within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("waysToSay")
    void unitsAgreeWithTheirNumber(DoubleFunction<Said> way) {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 3000; i++) {
            String words = way.apply(Math.pow(10, random.nextDouble(-1, 3.5))).words();
            assertThat(words).doesNotMatch("one \\w+s( an hour)?").doesNotContain("  ");
            if (words.matches(".*\\b(second|minute|mile|metre|kilometre|foot|floor|kilogram)( an hour)?")) {
                assertThat(words).matches("(one|a|half a|a quarter of a|three quarters of a) \\w+( an hour)?");
            }
        }
        assertThat(Said.seconds(1).words()).isEqualTo("one second");
        assertThat(Said.seconds(61).words()).isEqualTo("a minute");
        assertThat(Said.seconds(2).words()).isEqualTo("two seconds");
        assertThat(Said.mph(0.45).words()).isEqualTo("one mile an hour");
    }
}
