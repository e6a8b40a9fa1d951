package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.Remark;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.pace.Voices;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A remark of the loop is given to the second speaker, who takes nine seconds for anything. */
class SaidByTest {
    private static final Voices BEN_IS_SLOW = new Voices() {
        @Override
        public SpokenTime time(String text) {
            return new SpokenTime(2, 2, 2);
        }

        @Override
        public SpokenTime time(Remark remark, boolean shortForm) {
            return other(remark).isPresent() ? new SpokenTime(9, 9, 9) : time(remark.text());
        }

        @Override
        public Optional<String> other(Remark remark) {
            return Optional.ofNullable(remark.speaker());
        }
    };

    private static final WordsBasis BASIS = new WordsBasis(
            Map.of(),
            figure -> Set.of(),
            SampleWords.BASIS.said(),
            BEN_IS_SLOW,
            SampleWords.BASIS.lasts(),
            SampleWords.BASIS.names());

    private final WordsModel model = new WordsModel(
            SampleWords.editing(SmallShow.show()
                    .withSpeakers(new Speakers(List.of(new Speaker("Ann", false), new Speaker("Ben", false))))),
            BASIS);

    private WordsView.RemarkPage page() {
        return model.view().page().orElseThrow();
    }

    private void type(String text, String speaker) {
        RemarkDraft d = page().draft();
        model.type(new RemarkDraft(
                d.kind(),
                text,
                d.shortText(),
                d.weight(),
                d.at(),
                d.until(),
                d.earliestS(),
                d.latestS(),
                d.once(),
                speaker));
    }

    @Test
    void whoSaysARemarkIsChosenAndTimedAndStandsInTheList() {
        model.choosePlace("a1", "f1");
        model.choose(1);
        assertThat(page().speakers()).containsExactly("Ann", "Ben");
        assertThat(page().draft().speaker()).isEmpty();
        assertThat(page().verdict().word()).contains("2.0 s (");
        type(page().draft().text(), "Ben");
        Remark given = model.show().acts().get(0).figures().get(0).remarks().get(1);
        assertThat(given.speaker()).isEqualTo("Ben");
        assertThat(page().verdict().word()).contains("9.0 s (");
        assertThat(model.view().remarks().get(1).kind()).isEqualTo("Explanation, Ben");
        assertThat(model.view().remarks().get(0).kind()).isEqualTo("Call");
        type("Other words.", page().draft().speaker());
        assertThat(page().draft().speaker()).isEqualTo("Ben");
        type("Other words.", "");
        assertThat(model.show().acts().get(0).figures().get(0).remarks().get(1).speaker())
                .isNull();
    }
}
