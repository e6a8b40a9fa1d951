package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WholeActTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "In this act the aeroplane spends about twenty-five seconds upside down.",
                "The highest point in this act is about two thousand feet up.",
                "Nothing in this act goes higher than about nine hundred feet.",
                "Add it all up, and the aeroplane is upside down for about eleven seconds.",
                "At its fastest the glider does about a hundred and forty miles an hour.",
                "It is upside down for 25 seconds, all told.",
                "Look: eleven rolls in the whole display."
            })
    void sumsAndTheMostOfAnActAreToldOfAllOfIt(String text) {
        assertThat(WholeAct.isToldOf(text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "At its highest it is about two thousand feet up.",
                "This is the hardest pull of the act: everything feels about four times as heavy.",
                "It is upside down for about six seconds, longer than in any other figure of the act.",
                "There are no second chances in this act.",
                "Ada has won three cups in all."
            })
    void whatIsToldOfOneFigureOrOfPeopleIsNot(String text) {
        assertThat(WholeAct.isToldOf(text)).isFalse();
    }
}
