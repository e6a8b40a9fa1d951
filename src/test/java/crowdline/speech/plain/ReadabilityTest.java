package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crowdline.speech.say.Spoken;
import crowdline.speech.say.SpokenText;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadabilityTest {

    /** Worked examples published with the libraries words/flesch (tests and readme) and textstat (tests). */
    @ParameterizedTest
    @CsvSource({"1, 6, 6, 116.145", "1, 13, 26, 24.44", "1, 16, 22, 74.27", "1, 12, 23, 32.505", "1, 5, 7, 83.32"})
    void readingEaseAsPublished(int sentences, int words, int syllables, double ease) {
        assertThat(new Readability(sentences, words, syllables).readingEase()).isCloseTo(ease, within(0.006));
    }

    /** Worked examples published with words/flesch-kincaid and textstat (tests); limit from the readme of the former. */
    @ParameterizedTest
    @CsvSource({"1, 13, 26, 13.08", "1, 5, 7, 2.88", "1, 1, 1, -3.40"})
    void gradeLevelAsPublished(int sentences, int words, int syllables, double grade) {
        assertThat(new Readability(sentences, words, syllables).gradeLevel()).isCloseTo(grade, within(0.006));
    }

    @Test
    void aSingleRemarkHasNoMeaningfulScore() {
        Readability remark = Readability.of(new Spoken(Map.of()).expand("Now it rolls."), new Sentences());
        assertThat(remark).isEqualTo(new Readability(1, 3, 3));
        assertThat(remark.isMeaningful()).isFalse();
        assertThat(remark.gradeLevel()).isNegative();
    }

    @Test
    void numbersCountAsTheyAreSaid() {
        Readability block =
                Readability.of(new Spoken(Map.of()).expand("It has 180 hp. Mr. Quillan built it."), new Sentences());
        assertThat(block.sentences()).isEqualTo(2);
        assertThat(block.words()).isEqualTo(11);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            6  | 6  | very easy
            10 | 13 | easy, as in conversation
            13 | 26 | very difficult
            """)
    void bandsFollowTheEase(int words, int syllables, String band) {
        assertThat(new Readability(1, words, syllables).band()).isEqualTo(band);
    }

    /** Ten words a sentence: 196.685 less 0.846 for each syllable in a hundred words. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            126 | very easy
            127 | easy, as in conversation
            137 | easy, as in conversation
            138 | fairly easy
            149 | fairly easy
            150 | plain English
            161 | plain English
            162 | fairly difficult
            173 | fairly difficult
            174 | difficult
            197 | difficult
            198 | very difficult
            """)
    void bandsChangeWhereTheirEaseDoes(int syllables, String band) {
        assertThat(new Readability(10, 100, syllables).band()).isEqualTo(band);
    }

    /** 0.39 * 10 + 11.8 * 1.3 - 15.59. */
    @Test
    void gradeOfManySentencesIsThatOfTheirMean() {
        assertThat(new Readability(10, 100, 130).gradeLevel()).isCloseTo(3.65, within(1e-9));
    }

    @Test
    void textWithoutWordsIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Readability.of(new SpokenText("", ""), new Sentences()))
                .withMessageContaining("without words");
    }

    /** Counts as in the CMU Pronouncing Dictionary; the last two lines, which it lacks, counted by hand. */
    @ParameterizedTest
    @CsvSource({
        "aileron, 3",
        "aerobatic, 4",
        "biplane, 2",
        "monoplane, 3",
        "fuselage, 3",
        "elevator, 4",
        "pirouette, 3",
        "avalanche, 3",
        "horsepower, 3",
        "torque, 1",
        "radial, 3",
        "gyroscopic, 4",
        "hundred, 2",
        "rolled, 1",
        "wanted, 2",
        "loops, 1",
        "pushes, 2",
        "little, 2",
        "turned, 1",
        "propeller, 3",
        "beautiful, 3",
        "engine, 2",
        "player, 2",
        "eyes, 1",
        "serious, 3",
        "curious, 3",
        "patient, 2",
        "busiest, 3",
        "half-and-half, 3",
        "aeroplane, 3",
        "manoeuvre, 3",
        "manoeuvres, 3",
        "hammerhead, 3",
        "tailslide, 2",
        "immelmann, 3",
        "lomcevak, 3",
        "chandelle, 2",
        "wingover, 3",
        "wingtip, 2",
        "wingtips, 2",
        "taxies, 2",
        "Quillan's, 2",
        "aerofoils, 3",
        "manoeuvred, 3",
        "radials, 3",
        "metred, 2",
        "parades, 2"
    })
    void syllables(String word, int count) {
        assertThat(Syllables.count(word)).isEqualTo(count);
    }

    @Test
    void whatIsNoWordHasNoSyllable() {
        assertThat(Syllables.count("")).isZero();
        assertThat(Syllables.count("...")).isZero();
        assertThat(Syllables.count("שלום")).isEqualTo(1);
    }
}
