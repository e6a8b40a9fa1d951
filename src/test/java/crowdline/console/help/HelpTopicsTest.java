package crowdline.console.help;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.console.keys.Command;
import crowdline.console.place.Place;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class HelpTopicsTest {
    private final HelpTopics topics = HelpTopics.shipped();

    @ParameterizedTest
    @EnumSource(Place.class)
    void placeIsExplainedFirstWhereHelpIsAskedFor(Place place) {
        List<HelpTopic> from = topics.from(place);
        assertThat(from.get(0).places()).startsWith(place);
        assertThat(from.stream().filter(t -> t.places().contains(place)).count())
                .isGreaterThan(1);
        assertThat(from.get(0).paragraphs()).isNotEmpty();
    }

    @Test
    void keysStandInWordsAndNoneIsLeftOpen() {
        assertThat(topics.from(Place.LIVE)).allSatisfy(t -> assertThat(t.text()).doesNotContain("{", "}", "=="));
        HelpTopic stepping = topics.search("stepping through", Place.LIVE).get(0);
        assertThat(stepping.text()).contains(Command.NEXT.key() + " when the aircraft begins");
    }

    @Test
    void everyCommandOfLiveButTheObviousIsExplainedSomewhere() {
        String all = String.join(
                "\n", topics.from(Place.LIVE).stream().map(HelpTopic::text).toList());
        assertThat(List.of(
                        Command.HOLD,
                        Command.DROP,
                        Command.SWAP,
                        Command.OFF_PLAN,
                        Command.BY_AIRCRAFT,
                        Command.TAKE_BACK))
                .allSatisfy(command -> assertThat(all).contains(command.key()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        incident            | When something goes wrong
        incidnet            | When something goes wrong
        wind                | The air of the day
        pedal               | Stepping through the act
        something is wrong  | When something goes wrong
        microphone          | Letting Live listen
        cloud base          | Variants by cloud base
        larger              | Reading it in the sun
        """)
    void whatIsLookedForIsFound(String asked, String title) {
        List<HelpTopic> found = topics.search(asked, Place.PREPARE);
        assertThat(found).first().extracting(HelpTopic::title).isEqualTo(title);
    }

    @Test
    void nothingIsFoundForNonsenseAndEverythingForNothing() {
        assertThat(topics.search("xqzzk wvvbn", Place.LIVE)).isEmpty();
        assertThat(topics.search("  ", Place.LIVE)).hasSameSizeAs(topics.from(Place.LIVE));
    }

    @Test
    void keyOrPlaceThatDoesNotExistIsRefused() {
        assertThatThrownBy(() -> KeyedText.parts("== A\nPress {NO_SUCH_KEY}.\n"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> KeyedText.place("Nowhere")).hasMessage("there is no place Nowhere");
    }
}
