package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Gaps;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.Remark;
import crowdline.storage.Golden;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.ObjectMapper;

/** A show that says what its gaps are filled with, as it was first written. */
class GapsGoldenTest {
    private static Show show(String golden) throws Exception {
        ShowReading reading = Fixture.read(Golden.bytes(golden));
        assertThat(reading.findings()).noneMatch(found -> found.code().equals("unknown-key"));
        return Objects.requireNonNull(reading.show());
    }

    private static ShowReading changed(String right, String wrong) throws Exception {
        String golden =
                new ObjectMapper().readTree(Golden.bytes("show-1-gaps.json")).toString();
        assertThat(golden).contains(right);
        return Fixture.read(golden.replace(right, wrong).getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void itsPiecesAreReadPartByPart() throws Exception {
        Show show = show("show-1-gaps.json");
        assertThat(show.gaps())
                .isEqualTo(new Gaps(
                        35.5,
                        List.of(
                                new Piece(
                                        "tower",
                                        "Interview with the tower",
                                        null,
                                        List.of(
                                                new Piece.Part("How long have you stood here?", 45.5),
                                                new Piece.Part("And what was it before?", 30),
                                                new Piece.Part("Thank you.", 0))),
                                new Piece(
                                        "next",
                                        "Who comes next",
                                        show.acts().get(0).id(),
                                        List.of(new Piece.Part("She has flown since she was sixteen.", 0))))));
        assertThat(show.everyRemark())
                .extracting(Remark::id)
                .contains("tower (1)", "tower (2)", "tower (3)", "next (1)");
    }

    @Test
    void savedAgainItSaysTheSame() throws Exception {
        byte[] golden = Golden.bytes("show-1-gaps.json");
        Show show = show("show-1-gaps.json");
        ObjectMapper mapper = new ObjectMapper();
        byte[] written = new ShowFile().bytes(show, Fixture.read(golden).document());
        assertThat(mapper.readTree(written)).isEqualTo(mapper.readTree(golden));
        assertThat(Fixture.read(new ShowFile().bytes(show, null)).show()).isEqualTo(show);
    }

    @Test
    void aShowFromBeforeHasNoneAndIsHalfTalkAtMost() throws Exception {
        Show before = show("show-1.json");
        assertThat(before.gaps()).isEqualTo(new Gaps(50, List.of()));
        assertThat(new String(new ShowFile().bytes(before, null), StandardCharsets.UTF_8))
                .doesNotContain("gaps");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"talkPercent\":35.5 | \"talkPercent\":-1 | gaps.talkPercent",
                "\"talkPercent\":35.5 | \"talkPercent\":100.1 | gaps.talkPercent",
                "\"talkPercent\":35.5 | \"talkPercent\":\"half\" | gaps.talkPercent",
                "\"answerS\":45.5 | \"answerS\":-0.1 | gaps.pieces[0].parts[0].answerS",
                "\"answerS\":45.5 | \"answerS\":1801 | gaps.pieces[0].parts[0].answerS",
                "\"text\":\"Thank you.\" | \"text\":\" \" | gaps.pieces[0].parts[2].text",
                "{\"text\":\"She has flown since she was sixteen.\"} |  | gaps.pieces[1].parts",
                "\"title\":\"Who comes next\" | \"titel\":\"Who comes next\" | gaps.pieces[1]",
            })
    void whatNobodyCanMeanIsRefusedWithItsPlace(String right, String wrong, String path) throws Exception {
        ShowReading reading = changed(right, wrong == null ? "" : wrong);
        assertThat(reading.show()).isNull();
        assertThat(reading.findings().stream().map(f -> f.path())).contains(path);
    }

    @Test
    void twoPiecesOfOneNameAndAnActThatIsNotThereAreFound() throws Exception {
        Show show = Objects.requireNonNull(
                changed("\"id\":\"next\"", "\"id\":\"tower\"").show());
        Piece gone = new Piece("gone", "A long story", "nobody", List.of(new Piece.Part("Well.", 181)));
        Show other = show.withGaps(new Gaps(
                50, List.of(show.gaps().pieces().get(0), show.gaps().pieces().get(1), gone)));
        assertThat(ShowRules.check(other, CatalogueFile.shipped()).stream()
                        .filter(f -> f.path().startsWith("gaps"))
                        .map(f -> f.severity() + " " + f.path() + ": " + f.message()))
                .containsExactly(
                        "ERROR gaps.pieces[1].id: two pieces are called \"tower\"; each piece needs a name of its own in"
                                + " the show",
                        "WARNING gaps.pieces[2].beforeAct: the piece \"A long story\" leads up to the act \"nobody\", which"
                                + " the show does not have, so it is never said; name one that is there",
                        "WARNING gaps.pieces[2].parts[0].answerS: an answer in \"A long story\" takes 181 seconds; check"
                                + " that this is meant");
    }
}
