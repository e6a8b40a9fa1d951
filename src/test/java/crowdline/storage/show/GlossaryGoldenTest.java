package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.storage.Golden;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A show with words of its own, as it was first written. */
class GlossaryGoldenTest {
    private static Show show() throws Exception {
        ShowReading reading = Fixture.read(Golden.bytes("show-1-glossary.json"));
        assertThat(reading.findings()).noneMatch(found -> found.code().equals("unknown-key"));
        return Objects.requireNonNull(reading.show());
    }

    @Test
    void itsWordsAreReadWithWhatTheyLeaveOut() throws Exception {
        assertThat(show().terms())
                .containsExactly(
                        Term.own("the Elm", "The tall tree behind the far fence."),
                        new Term(
                                "datum",
                                List.of("the flagpole"),
                                "place and rules",
                                "The flagpole, here.",
                                "Look at the flag.",
                                "DAY-tum",
                                List.of("the Elm", "loop"),
                                "common practice"));
        assertThat(show().figures().get(0).source()).isEqualTo("Ada, in the bar");
    }

    @Test
    void savedAgainItSaysTheSame() throws Exception {
        byte[] golden = Golden.bytes("show-1-glossary.json");
        ShowReading reading = Fixture.read(golden);
        byte[] written = new ShowFile().bytes(Objects.requireNonNull(reading.show()), reading.document());
        ObjectMapper mapper = new ObjectMapper();
        JsonNode before = mapper.readTree(golden);
        JsonNode after = mapper.readTree(written);
        assertThat(after.path("terms")).isEqualTo(before.path("terms"));
        assertThat(Fixture.read(new ShowFile().bytes(show(), null)).show()).isEqualTo(show());
    }
}
