package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.console.words.SampleWords;
import crowdline.console.words.WordsModel;
import crowdline.console.words.WordsModelTest;
import crowdline.show.Show;
import crowdline.speech.say.Spoken;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ActReadingTest {

    @Test
    void scoresAreSaidForABlockAndNotForALine() {
        assertThat(ActReading.inWords(Optional.of(new Readability(1, 3, 3)))).isEmpty();
        // 206.835 - 1.015 * 10 - 84.6 * 1.3 = 86.7
        assertThat(ActReading.inWords(Optional.of(new Readability(10, 100, 130))))
                .isEqualTo("All together reads easy, as in conversation (87).");
        assertThat(ActReading.inWords(Optional.empty())).isEmpty();
    }

    @Test
    void eachTextIsCountedOnceAndAfterAnEditOnlyTheEditedOne() {
        Spoken spoken = new Spoken(Map.of());
        List<String> counted = new ArrayList<>();
        ActReading reading = new ActReading(text -> {
            counted.add(text);
            return spoken.expand(text);
        });
        Show show = SmallShow.show();
        assertThat(reading.all(show)).containsOnlyKeys(ActReading.SHOW, "a1");
        assertThat(counted).isNotEmpty().doesNotHaveDuplicates();
        counted.clear();
        WordsModel model = new WordsModel("day.json", show, SampleWords.BASIS, edited -> {});
        model.choosePlace("a1", "f1");
        model.type(WordsModelTest.text(model.view().page().orElseThrow().draft(), "Quite new words."));
        reading.all(model.show());
        assertThat(counted).containsExactly("Quite new words.");
    }
}
