package crowdline.sight;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.CrowdUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaidTest {
    /** 160 mph where 70 are allowed is 2.29 times that, and neither twice nor two and a half times. */
    @ParameterizedTest
    @CsvSource({
        "2.29, more than twice",
        "2.05, about twice",
        "2.42, about two and a half times",
        "2.71, more than two and a half times",
        "2.8, nearly three times",
        "3.2, more than three times",
        "1.9, nearly twice",
        "1.62, more than one and a half times",
        "5.3, about five and a half times",
        "6.9, about seven times"
    })
    void timesAreRoundedAsTheyAre(double ratio, String words) {
        Said said = Said.roughly(ratio, "times");
        assertThat(said.words()).isEqualTo(words);
        assertThat(said.rounded()).isBetween(ratio - said.step() / 2, ratio + said.step() / 2);
    }

    @Test
    void lengthsAreToldAsTheCrowdMeasures() {
        assertThat(Said.length(25, CrowdUnits.MILES).words()).isEqualTo("eighty feet");
        assertThat(Said.length(25, CrowdUnits.METRIC).words()).isEqualTo("twenty-five metres");
        assertThat(Said.distance(600, CrowdUnits.MILES).words()).isEqualTo("two thousand feet");
    }
}
