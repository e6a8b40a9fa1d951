package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.console.words.SampleWords;
import crowdline.console.words.WordsModel;
import crowdline.console.words.WordsModelTest;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.say.Spoken;
import crowdline.speech.say.SpokenText;
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
                .isEqualTo("As a whole, by length: easy, as in conversation (87).");
        assertThat(ActReading.inWords(Optional.empty())).isEmpty();
    }

    private static Show saying(RemarkPlace place, String text) {
        return place.with(SmallShow.show(), List.of(Remark.of("new", RemarkKind.FACT, text)));
    }

    private static ActReading plainly(List<String> counted) {
        return new ActReading(text -> {
            counted.add(text);
            return new SpokenText(text, text);
        });
    }

    /** A hundred words of one syllable, ten to a sentence: 206.835 - 10.15 - 84.6. */
    @Test
    void actAndTheShowOutsideActsReadApart() {
        String long100 =
                "Look up now and see it go round and round. ".repeat(10).strip();
        ActReading reading = plainly(new ArrayList<>());
        assertThat(reading.all(saying(RemarkPlace.SHOW, long100)))
                .containsEntry(ActReading.SHOW, "As a whole, by length: very easy (112).")
                .containsEntry("a1", "");
        Show act = saying(new RemarkPlace("a1", "f3"), long100);
        assertThat(reading.all(act)).containsEntry(ActReading.SHOW, "");
        assertThat(reading.of(act, "a1").orElseThrow().words())
                .as("with what the figures say")
                .isEqualTo(
                        100 + reading.of(SmallShow.show(), "a1").orElseThrow().words());
        assertThat(reading.of(saying(RemarkPlace.SHOW, "..."), null))
                .as("no word")
                .isEmpty();
    }

    /** Every letter typed makes a text; they are not kept for ever. */
    @Test
    void afterFourThousandTextsAllAreCountedAnew() {
        List<String> counted = new ArrayList<>();
        ActReading reading = plainly(counted);
        for (int i = 0; i < 4000; i++) {
            reading.of(saying(RemarkPlace.SHOW, "Look " + "o".repeat(i % 7) + i), null);
        }
        counted.clear();
        reading.of(saying(RemarkPlace.SHOW, "Look 0"), null);
        assertThat(counted).isEmpty();
        reading.of(saying(RemarkPlace.SHOW, "Look again"), null);
        reading.of(saying(RemarkPlace.SHOW, "Look 0"), null);
        assertThat(counted).containsExactly("Look again", "Look 0");
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
        WordsModel model = SampleWords.model(show);
        model.choosePlace("a1", "f1");
        model.type(WordsModelTest.text(model.view().page().orElseThrow().draft(), "Quite new words."));
        reading.all(model.show());
        assertThat(counted).containsExactly("Quite new words.");
    }
}
