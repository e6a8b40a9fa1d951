package crowdline.list.about;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HeightsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Base 1500. Ceiling 800 ft. loop, roll",
                "ceiling: 1,200 ft\nfloor is 1500",
                "Minimum height 1000, max height of 1000 ft",
                "cloudbase 900, base at 1000 ft"
            })
    void aCeilingThatIsNoHigherThanTheBaseIsSaid(String letter) {
        assertThat(Heights.contradiction(letter)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Base 500, ceiling 2500 ft",
                "Ceiling 800 ft",
                "Base 1500",
                "cloud base 900 ft, ceiling 2500",
                "base 500 ft, ceiling 120 kt",
                "if the cloudbase is below 1500 the flat one; base 2500 for the spin"
            })
    void nothingElseIs(String letter) {
        assertThat(Heights.contradiction(letter)).isEmpty();
    }
}
