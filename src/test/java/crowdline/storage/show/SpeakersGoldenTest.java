package crowdline.storage.show;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Interpreting;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import crowdline.storage.Golden;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** Who speaks, as it lies on disks, and what it says. What is expected is written here by hand. */
class SpeakersGoldenTest {
    private static Show read(String golden) {
        ShowReading reading = new ShowFile().read(Path.of("day.json"), Golden.bytes(golden));
        assertThat(reading.findings()).isEmpty();
        return Objects.requireNonNull(reading.show());
    }

    @Test
    void speakersAreReadAndWrittenAsTheyLieThere() {
        Show show = read("show-1-speakers.json");
        assertThat(show.speakers())
                .isEqualTo(new Speakers(List.of(new Speaker("Ann Loder", false), new Speaker("Ben Varley", true))));
        assertThat(show.remarks())
                .containsExactly(
                        Remark.of("hello", RemarkKind.FILLER, "Good afternoon.").saidBy("Ben Varley"),
                        Remark.of("thanks", RemarkKind.DUTY, "Thank you all for coming."));
        JsonMapper mapper = new JsonMapper();
        for (String part : List.of("/speakers", "/remarks")) {
            assertThat(mapper.readTree(new ShowFile().bytes(show, null)).at(part))
                    .isEqualTo(mapper.readTree(Golden.bytes("show-1-speakers.json"))
                            .at(part));
        }
    }

    @Test
    void aShowFromBeforeHasNoSpeakers() {
        Show show = read("show-1-duties.json");
        assertThat(show.speakers()).isEqualTo(Speakers.NONE);
        assertThat(show.everyRemark()).allMatch(remark -> remark.speaker() == null);
        assertThat(new JsonMapper().readTree(new ShowFile().bytes(show, null)).has("speakers"))
                .isFalse();
    }

    @Test
    void otherLanguagesAreReadAndWrittenAsTheyLieThere() {
        Show show = read("show-1-languages.json");
        assertThat(show.speakers().interpreting()).isEqualTo(Interpreting.BESIDE);
        assertThat(show.remarks())
                .extracting(Remark::translation)
                .containsExactly(
                        new Translation("fr", "Bonjour \u00e0 tous.", "Ben Varley"),
                        new Translation("ar", "\u062e\u0645\u0633\u0645\u0626\u0629 \u0645\u062a\u0631.", null),
                        null);
        JsonMapper mapper = new JsonMapper();
        for (String part : List.of("/interpreting", "/remarks")) {
            assertThat(mapper.readTree(new ShowFile().bytes(show, null)).at(part))
                    .isEqualTo(mapper.readTree(Golden.bytes("show-1-languages.json"))
                            .at(part));
        }
        assertThat(read("show-1-speakers.json").speakers().interpreting()).isEqualTo(Interpreting.AFTER);
    }

    @Test
    void whoSaysAPieceAndShortAndOlderWordsAreReadAndWrittenAsTheyLieThere() {
        Show show = read("show-1-voices.json");
        assertThat(show.remarks())
                .extracting(Remark::translation)
                .containsExactly(new Translation("fr", "Bonjour \u00e0 tous.", "Bonjour.", "Ben Varley", true));
        assertThat(show.gaps().pieces())
                .extracting(Piece::speaker)
                .as("whole pieces")
                .containsExactly("Ben Varley", null);
        assertThat(show.gaps().remarks())
                .extracting(Remark::speaker)
                .as("a part without a name is said by whoever says the piece")
                .containsExactly("Ben Varley", "Ann Loder", "Ben Varley", null);
        assertThat(show.gaps().remarks())
                .extracting(Remark::translation)
                .containsExactly(
                        null, null, null, new Translation("fr", "Elle vole depuis ses seize ans.", "Ben Varley"));
        JsonMapper mapper = new JsonMapper();
        for (String part : List.of("/gaps", "/remarks")) {
            assertThat(mapper.readTree(new ShowFile().bytes(show, null)).at(part))
                    .isEqualTo(
                            mapper.readTree(Golden.bytes("show-1-voices.json")).at(part));
        }
    }

    @Test
    void aShowFromBeforeHasNothingOlderAndItsPiecesAreWhoeversSitsAtTheConsole() {
        assertThat(read("show-1-languages.json").remarks())
                .extracting(Remark::translation)
                .allMatch(other -> other == null || (!other.older() && other.shortText() == null));
        assertThat(read("show-1-gaps.json").gaps().remarks()).allMatch(part -> part.speaker() == null);
    }

    @Test
    void aLanguageThatIsNoneIsFoundWithItsPlace() {
        String wrong = new String(Golden.bytes("show-1-languages.json"), UTF_8).replace("\"fr\"", "\"French please\"");
        ShowReading reading = new ShowFile().read(Path.of("day.json"), wrong.getBytes(UTF_8));
        assertThat(reading.show()).isNull();
        assertThat(reading.findings()).hasSize(1);
        assertThat(reading.findings().get(0).toString()).contains("language", "French please");
    }
}
