package crowdline.speech.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crowdline.speech.say.Spoken;
import crowdline.speech.say.SpokenText;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaceTest {

    private static SpokenText text(String spoken) {
        return new SpokenText(spoken, spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | 0 | 0
            Now it rolls. | 10 | 0 | 0
            Up, over; round: down | 15 | 3 | 0
            It rolls. It falls! Where? Here | 23 | 0 | 3
            It waits... and rolls | 15 | 1 | 0
            It waits... And rolls | 15 | 0 | 1
            It waits… and rolls | 15 | 1 | 0
            It waits… And rolls | 15 | 0 | 1
            It waits.. and rolls | 15 | 1 | 0
            It waits. and rolls | 15 | 0 | 1
            It waits...and rolls, up | 17 | 2 | 0
            Up?! It rolls... and falls. Now | 20 | 1 | 2
            up.over and round | 14 | 0 | 0
            up – and over (twice) | 14 | 2 | 0
            up — and over… | 9 | 1 | 0
            R A F | 9 | 0 | 0
            a loop | 5 | 0 | 0
            I am | 3 | 0 | 0
            six g | 6 | 0 | 0
            שלום | 4 | 0 | 0
            don't | 4 | 0 | 0
            """)
    void lettersAndPausesAreCounted(String spoken, int letters, int commas, int stops) {
        SpokenText text = text(spoken);
        assertThat(text.letters()).isEqualTo(letters);
        assertThat(text.commas()).isEqualTo(commas);
        assertThat(text.innerStops()).isEqualTo(stops);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            the | 2.25
            loop | 5
            The straps | 9.25
            R A F | 9
            kitchen | 7.25
            of it | 4
            don't | 5
            '' | 0
            """)
    void lettersAreWeighedByHowLongTheySound(String spoken, double weighed) {
        assertThat(text(spoken).soundedLetters()).isCloseTo(weighed / 1.09, within(1e-12));
    }

    /** Rodero 2012: 160 to 180 words a minute recommended for radio; make-up of the text as measured on 30 remarks. */
    @Test
    void defaultIs160WordsAMinuteOnCommentary() {
        Pace pace = Pace.DEFAULT;
        double letters = 388 * 4.15;
        double seconds = pace.fixedS() + pace.perLetterS() * letters + pace.perCommaS() * 31 + pace.perStopS() * 29;
        assertThat(388 * 60 / seconds).isCloseTo(160, within(0.5));
    }

    /** 734 ms at 94.2 % of full stops and 511 ms at 44.7 % of commas: Brigham Young University thesis etd-11313. */
    @Test
    void defaultPausesArePeoples() {
        assertThat(Pace.DEFAULT.perStopS()).isCloseTo(0.734 * 0.942, within(0.005));
        assertThat(Pace.DEFAULT.perCommaS()).isBetween(0.511 * 0.447, 0.3);
    }

    /** 13,100 clips of one reader: 17.23 words in 6.57 s a clip (LJ Speech, Ito and Johnson 2017). */
    @Test
    void defaultReadsAnOrdinarySentenceAboutAsLongAsAPersonDoes() {
        // 1,308,678 characters over 225,715 words leave about 4.6 letters a word (spaces and stops taken off).
        double seconds =
                Pace.DEFAULT.fixedS() + Pace.DEFAULT.perLetterS() * 17.23 * 4.6 + Pace.DEFAULT.perCommaS() * 1.2;
        assertThat(seconds / 6.57).isBetween(0.85, 1.15);
    }

    @Test
    void bandHoldsEightyPercentOfReadings() {
        SpokenText text = text("Watch the top of the loop, where she almost floats.");
        SpokenTime time = Pace.DEFAULT.time(text);
        Random random = new Random(44);
        int inside = 0;
        for (int i = 0; i < 20_000; i++) {
            double seconds = time.seconds() * Math.exp(Pace.DEFAULT.relativeError() * random.nextGaussian());
            inside += seconds >= time.lowS() && seconds <= time.highS() ? 1 : 0;
        }
        assertThat(inside / 20_000.0).isCloseTo(0.80, within(0.01));
    }

    @Test
    void timeIsTheSumOfItsParts() {
        Pace pace = new Pace("test", 0.1, 0.05, 0.2, 0.5, 0);
        // 24 letters in six words that all carry sense, with "tt" and "Th" as one sound each.
        double seconds = 0.1 + (24 - 2 * 0.75 + 6) / 1.09 * 0.05 + 0.2 + 0.5;
        SpokenTime time = pace.time(text("Ten letters, now. Then ten more."));
        assertThat(time.seconds()).isCloseTo(seconds, within(1e-12));
        assertThat(time).isEqualTo(new SpokenTime(time.seconds(), time.seconds(), time.seconds()));
    }

    @Test
    void silenceTakesNoTime() {
        assertThat(Pace.DEFAULT.time(text(""))).isEqualTo(SpokenTime.NONE);
        assertThat(Pace.DEFAULT.time(text("...!"))).isEqualTo(SpokenTime.NONE);
    }

    /** Single sentences vary by 18.9, whole paragraphs of 132 words by 5.2 words a minute (Altpeter and others 2015). */
    @Test
    void blockIsMoreCertainThanItsRemarks() {
        SpokenTime one = new SpokenTime(5, 5 / 1.15, 5 * 1.15);
        SpokenTime block = SpokenTime.NONE;
        for (int i = 0; i < 9; i++) {
            block = block.plus(one);
        }
        assertThat(block.seconds()).isCloseTo(45, within(1e-9));
        assertThat((block.highS() - block.seconds()) / 45).isCloseTo(0.15 / 3, within(1e-9));
        assertThat((block.seconds() - block.lowS()) / 45).isCloseTo((1 - 1 / 1.15) / 3, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "-0.1, 0.07, 0.2, 0.6, 0.1, fixedS is -0.1; it must be a number from 0.0 to 5.0",
        "5.1, 0.07, 0.2, 0.6, 0.1, fixedS is 5.1; it must be a number from 0.0 to 5.0",
        "0.1, -0.07, 0.2, 0.6, 0.1, perLetterS is -0.07; it must be a number from 0.0 to 1.0",
        "0.1, 1.1, 0.2, 0.6, 0.1, perLetterS is 1.1; it must be a number from 0.0 to 1.0",
        "0.1, 0.07, 5.1, 0.6, 0.1, perCommaS is 5.1; it must be a number from 0.0 to 5.0",
        "0.1, 0.07, 0.2, -0.6, 0.1, perStopS is -0.6; it must be a number from 0.0 to 5.0",
        "0.1, 0.07, 0.2, 0.6, 1.1, relativeError is 1.1; it must be a number from 0.0 to 1.0"
    })
    void eachPartOfAPaceHasItsRange(
            double fixedS, double letterS, double commaS, double stopS, double error, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pace("x", fixedS, letterS, commaS, stopS, error))
                .withMessage(message);
    }

    @Test
    void impossiblePacesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pace("x", 0, 0, 0, 0, 0))
                .withMessageContaining("perLetterS");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pace("x", Double.NaN, 0.07, 0, 0, 0))
                .withMessageContaining("fixedS");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Pace(" ", 0, 0.07, 0, 0, 0))
                .withMessageContaining("name");
        assertThatIllegalArgumentException().isThrownBy(() -> new SpokenTime(1, 2, 3));
    }

    /** The initialism of three letters took a synthesiser 0.54 s letter by letter, at 0.0694 s a letter. */
    @Test
    void spelledLettersTakeAsLongAsTheyDoMeasured() {
        SpokenText raf = new Spoken(Map.of()).expand("RAF");
        assertThat(raf.soundedLetters() * 0.0694).isCloseTo(0.54, within(0.05));
    }

    /** exp(1.2816 * 0.15) is 1.2119, and 1 / 1.2119 is 0.8251. */
    @Test
    void bandIsSaidInPercentOfWhatIsPredicted() {
        assertThat(Pace.DEFAULT.bandInWords())
                .isEqualTo("8 of 10 remarks will take from 17% less to 21% more than predicted.");
    }
}
