package crowdline.speech.say;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a text from anywhere is turned into before it is read: one way of writing each thing. */
class CleanTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = false, textBlock = """
            12 000|12,000
             12 000| 12,000
            9 999|9,999
            1 250 000|1,250,000
            (12 000)|(12,000)
            The whole of it weighs 12 000 kg.|The whole of it weighs 12,000 kg.
            ,12 000|,12 000
            """)
    void spacesBetweenThousandsAreCommas(String written, String clean) {
        assertThat(CleanText.of(written)).isEqualTo(clean);
    }

    /** Rows of digits that are no number in groups: telephones, squadrons, times, registrations, odd groups. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1234 567",
                "0 123",
                "12 00",
                "12 0000",
                "12 00a",
                "01 234 567",
                "020 7946 012",
                "3.5 000",
                "10:30 000",
                "1/2 000",
                "3-12 000",
                "3–12 000",
                "'12 000",
                "B17 000",
                "No. 5 617 Squadron",
                "It lasts 4 to 5 a day"
            })
    void otherSpacesStay(String written) {
        assertThat(CleanText.of(written)).isEqualTo(written);
    }

    @Test
    void blankLineEndsItsSentenceWhateverSpacesAreInIt() {
        assertThat(CleanText.of("The loop\n \t\nWatch")).startsWith("The loop. ");
        assertThat(CleanText.of("A\n\nB")).startsWith("A. ");
        assertThat(CleanText.of("The loop\u2029Watch")).isEqualTo("The loop. Watch");
        assertThat(CleanText.of("The loop  \n\nWatch")).startsWith("The loop  . ");
    }

    @Test
    void lineThatOnlyEndsEndsNoSentence() {
        assertThat(CleanText.of("The loop\n")).isEqualTo("The loop ");
        assertThat(CleanText.of("The loop\n   ")).isEqualTo("The loop    ");
        assertThat(CleanText.of("The loop\nwatch\n\n")).startsWith("The loop watch. ");
        assertThat(CleanText.of("The loop!\n\nWatch")).startsWith("The loop!  ");
        assertThat(CleanText.of("\n\nWatch")).isEqualTo("  Watch");
    }

    /** A number in a ring or a Roman numeral of one sign is its digits or letters; what has no plain form is a space. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = false, textBlock = """
            Mk Ⅸ|Mk IX
            turn ③|turn 3
            turn ㉑ of|turn 21 of
            turn ⑶ of|turn   of
            a ㊀ b|a   b
            ٣|3
            the ® sign|the   sign
            the «up» one|the  up  one
            """)
    void signsOfOtherAlphabetsArePlainOnesOrSpaces(String written, String clean) {
        assertThat(CleanText.of(written)).isEqualTo(clean);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            don’t        | don't
            −3‐4         | -3-4
            up‒down      | up–down
            up―over      | up—over
            21º and 21 ℃ | 21° and 21 °C
            70℉          | 70°F
            1⁄2          | 1/2
            № 3          | No.  3
            9 m/s^2, m^3 | 9 m/s², m³
            +/-6         | ±6
            2 PM, 3 A.M. | 2 pm, 3 a.m.
            PM           | PM
            2 PMS        | 2 PMS
            """)
    void eachThingIsWrittenOneWay(String written, String clean) {
        assertThat(CleanText.of(written)).isEqualTo(clean);
    }
}
