package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
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
}
