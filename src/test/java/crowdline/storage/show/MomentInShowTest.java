package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Show;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.storage.Golden;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What may stand in a show file where a remark is tied to a moment. */
class MomentInShowTest {
    private static ShowReading with(String moment) {
        String text = new String(Golden.bytes("show-1-moments.json"), StandardCharsets.UTF_8);
        return Fixture.read(text.replace("\"rolls 2\"", moment));
    }

    @Test
    void theSchemaKnowsTheMomentsThatTheProgramKnows() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(MomentName.class.getResourceAsStream("/crowdline/show-schema.json"))) {
            JsonNode moment = new JsonMapper().readTree(in).at("/$defs/moment");
            List<String> words =
                    Arrays.stream(MomentKind.values()).map(MomentKind::words).toList();
            assertThat(moment.path("examples").valueStream().map(JsonNode::asString))
                    .containsExactlyElementsOf(words);
            assertThat(moment.path("pattern").asString())
                    .isEqualTo("^(" + String.join("|", words) + ")( [1-9][0-9]{0,2})?$");
        }
    }

    @Test
    void aMomentThatNobodyKnowsIsToldWithTheNearestThatThereIs() {
        ShowReading reading = with("\"over the topp\"");
        assertThat(reading.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.ERROR);
            assertThat(f.message())
                    .contains("until is \"over the topp\"; it must be one of begins, the roll ends,")
                    .contains("did you mean \"over the top\"?")
                    .endsWith("of several of a kind, the later ones with their number");
        });
    }

    @Test
    void aMomentIsText() {
        assertThat(with("2").findings())
                .singleElement()
                .satisfies(f -> assertThat(f.message()).contains("it must be text in double quotes"));
    }

    @Test
    void whatBelongsToNoFigureAndWhatIsACallCanBeTiedToNothing() {
        String text = new String(Golden.bytes("show-1-moments.json"), StandardCharsets.UTF_8);
        String act = text.replace("\"text\": \"It is small.\"", "\"text\": \"It is small.\", \"at\": \"pivots\"");
        assertThat(rules(act)).anyMatch(m -> m.contains("belongs to no figure, so its at, until"));
        String call = text.replaceFirst("\"kind\": \"explanation\"", "\"kind\": \"call\"");
        assertThat(rules(call)).anyMatch(m -> m.contains("\"before\" is a call"));
        assertThat(rules(text)).noneMatch(m -> m.contains("mean nothing"));
    }

    private static List<String> rules(String text) {
        Show show = Objects.requireNonNull(Fixture.read(text).show());
        return ShowRules.check(show, CatalogueFile.shipped()).stream()
                .map(Finding::message)
                .toList();
    }
}
