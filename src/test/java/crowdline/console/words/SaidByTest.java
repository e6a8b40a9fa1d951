package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.Remark;
import crowdline.show.figure.Translation;
import crowdline.speech.pace.Interpreted;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.pace.Voices;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
        public Optional<Interpreted> interpreted(Remark remark, boolean shortForm) {
            return Optional.ofNullable(remark.translation())
                    .filter(words -> !"Cleo".equals(words.speaker()))
                    .map(words -> new Interpreted("Ben", words, shortForm, new SpokenTime(4, 3, 5)));
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
        type(text, speaker, page().draft().other());
    }

    private void type(String text, String speaker, OtherDraft other) {
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
                speaker,
                other));
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
        assertThat(model.view().remarks().get(1).text()).startsWith("Ben: ");
        assertThat(model.view().remarks().get(0).text()).doesNotContain(":");
        type("Other words.", page().draft().speaker());
        assertThat(page().draft().speaker()).isEqualTo("Ben");
        type("Other words.", "");
        assertThat(model.show().acts().get(0).figures().get(0).remarks().get(1).speaker())
                .isNull();
    }

    private Remark first() {
        return model.show().acts().get(0).figures().get(0).remarks().get(1);
    }

    @Test
    void anotherLanguageIsTypedAndTimedAndMendedWhereItsCodeIsNone() {
        model.choosePlace("a1", "f1");
        model.choose(1);
        String text = page().draft().text();
        type(text, "", new OtherDraft("fr", "", "", ""));
        assertThat(first().translation()).as("nothing to say in it yet").isNull();
        type(text, "", new OtherDraft("fr", "Quatre fois son poids.", "", "Ben"));
        assertThat(first().translation()).isEqualTo(new Translation("fr", "Quatre fois son poids.", "Ben"));
        assertThat(Objects.requireNonNull(page().other()).word())
                .isEqualTo("French: 4.0 s (3.0 to 5.0), after the remark");
        type(text, "", new OtherDraft("french", "Quatre fois.", "", "Ben"));
        assertThat(page().problems())
                .containsExactly(
                        "The other language is \"french\"; write a code such as fr for French or ar for Arabic.");
        assertThat(Objects.requireNonNull(first().translation()).text()).isEqualTo("Quatre fois son poids.");
        type(text, "", new OtherDraft("fr", "Quatre fois.", "", "Cleo"));
        assertThat(Objects.requireNonNull(page().other()).word()).isEqualTo("There is nobody to say the French");
        type(text, "", new OtherDraft("", " ", "", ""));
        assertThat(first().translation()).isNull();
        assertThat(page().other()).isNull();
    }

    private WordsView.RemarkRow row() {
        return model.view().remarks().get(1);
    }

    @Test
    void wordsInAnotherLanguageAreOlderOnceTheTextIsTypedAnewUntilTheyAreTypedOrAccepted() {
        model.choosePlace("a1", "f1");
        model.choose(1);
        OtherDraft french = new OtherDraft("fr", "Quatre fois son poids.", "Quatre fois.", "Ben");
        type(page().draft().text(), "", french);
        assertThat(page().acceptable()).isFalse();
        type(page().draft().text() + " ", "", french);
        assertThat(page().acceptable()).as("a space says nothing").isFalse();
        type("Five times her weight.", "", french);
        assertThat(Objects.requireNonNull(page().other()).word())
                .isEqualTo("French is older than the text: edit it, or Ctrl+Enter if it still fits");
        assertThat(Objects.requireNonNull(row().draft()).word()).isEqualTo("Older");
        type("Five times her weight, all in her arms.", "", french);
        assertThat(Objects.requireNonNull(first().translation()).older()).isTrue();
        model.accept();
        assertThat(page().acceptable()).isFalse();
        assertThat(Objects.requireNonNull(first().translation()).older()).isFalse();
        type("Six times her weight.", "", french);
        type("Six times her weight.", "", new OtherDraft("fr", "Six fois son poids.", "Quatre fois.", "Ben"));
        assertThat(Objects.requireNonNull(first().translation()).older()).isFalse();
        assertThat(row().draft()).isNull();
    }

    @Test
    void aShortFormAloneInAnotherLanguageIsNothingYet() {
        model.choosePlace("a1", "f1");
        model.choose(1);
        type(page().draft().text(), "", new OtherDraft("fr", "", "Quatre fois.", ""));
        assertThat(first().translation()).isNull();
        assertThat(page().problems())
                .containsExactly("The other language has only a short form; write the full text too, or it will not"
                        + " be said.");
    }
}
