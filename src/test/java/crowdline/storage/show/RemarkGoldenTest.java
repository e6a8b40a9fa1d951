package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Show;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.storage.Golden;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Remarks as they lie on disks, and what they say. What is expected is written here by hand. */
class RemarkGoldenTest {
    private static Show read(String golden) {
        ShowReading reading = new ShowFile().read(Path.of("day.json"), Golden.bytes(golden));
        assertThat(reading.findings()).isEmpty();
        return Objects.requireNonNull(reading.show());
    }

    @Test
    void remarksTiedToMomentsAreReadAndWrittenAsTheyLieThere() {
        Show show = read("show-1-moments.json");
        MomentName begins = MomentName.first(MomentKind.SPIN_BEGINS);
        MomentName stops = MomentName.first(MomentKind.SPIN_STOPS);
        assertThat(show.acts().get(0).figures().get(0).remarks())
                .containsExactly(
                        new Remark(
                                "before",
                                RemarkKind.EXPLANATION,
                                "Watch it stop.",
                                null,
                                begins,
                                null,
                                -3.0,
                                null,
                                1,
                                false,
                                false),
                        new Remark(
                                "while",
                                RemarkKind.FACT,
                                "It goes round and round.",
                                null,
                                begins,
                                stops,
                                null,
                                -0.5,
                                1,
                                false,
                                false),
                        Remark.of("by", RemarkKind.EXPLANATION, "All this before it rolls again.")
                                .tied(null, new MomentName(MomentKind.ROLLS, 2)));
        JsonMapper mapper = new JsonMapper();
        assertThat(mapper.readTree(new ShowFile().bytes(show, null))
                        .at("/acts/0/figures/0/remarks")
                        .toPrettyString())
                .isEqualTo(mapper.readTree(Golden.bytes("show-1-moments.json"))
                        .at("/acts/0/figures/0/remarks")
                        .toPrettyString());
    }

    /** A first draft until somebody accepted it; what says nothing of it is a person's. */
    @Test
    void draftsAreReadAndWrittenAsTheyLieThere() {
        Show show = read("show-1-draft.json");
        assertThat(show.acts().get(0).figures().get(0).remarks())
                .containsExactly(
                        Remark.of("call", RemarkKind.CALL, "Now the loop.").withDraft(true),
                        Remark.of("why", RemarkKind.EXPLANATION, "Look how round it is."));
        assertThat(show.acts().get(0).remarks())
                .containsExactly(
                        Remark.of("fact", RemarkKind.FACT, "It is small.").withDraft(false));
        JsonMapper mapper = new JsonMapper();
        JsonNode written = mapper.readTree(new ShowFile().bytes(show, null));
        JsonNode golden = mapper.readTree(Golden.bytes("show-1-draft.json"));
        assertThat(written.at("/acts/0/figures/0/remarks").toPrettyString())
                .isEqualTo(golden.at("/acts/0/figures/0/remarks").toPrettyString());
    }
}
