package crowdline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the worked examples of OpenStax, University Physics Volume 1, section 17.2. */
class SoundTest {
    @ParameterizedTest
    @CsvSource({"20, 343, 0.5", "30, 348.7, 0.15", "56, 363, 0.5", "35, 351.58, 0.01"})
    void soundIsAsFastAsTheBookSays(double temperatureC, double mps, double tolerance) {
        assertThat(Sound.speedMps(temperatureC)).isCloseTo(mps, within(tolerance));
    }

    @Test
    void fireworkSeenFourTenthsOfASecondEarlyIsAsFarAsTheBookAsks() {
        // The problem gives 0.400 s at 24.0 °C; 138 m is its answer by the book's own formula.
        assertThat(Sound.delayS(138, 24)).isCloseTo(0.400, within(0.0015));
    }

    @Test
    void batHearsItsEchoAfterTheTimesPrinted() {
        assertThat(Sound.delayS(2 * 3.00, 5)).isCloseTo(0.0180, within(0.00005));
        assertThat(Sound.delayS(2 * 3.00, 35)).isCloseTo(0.0171, within(0.00005));
    }

    @Test
    void fiveSecondsAreAboutOneMile() {
        assertThat(Sound.delayS(1609.344, 15)).isCloseTo(5, within(0.3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.2 | you hear it at once",
                "0.9 | you hear it about one second late",
                "1.4 | you hear it about a second and a half late",
                "1.9 | you hear it about two seconds late",
                "4.4 | you hear it about four seconds late"
            })
    void wordsRoundAsPeopleDo(double delayS, String words) {
        assertThat(Sound.words(delayS)).isEqualTo(words);
    }
}
