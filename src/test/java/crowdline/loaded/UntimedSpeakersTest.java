package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import crowdline.show.DayAir;
import crowdline.show.Gaps;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.Venue;
import crowdline.show.check.Finding;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class UntimedSpeakersTest {
    private static final Pace ANN = new Pace("Ann", 0, 0.1, 0, 0, 0.1);
    private static final Pace BEN = new Pace("Ben", 0, 0.3, 0, 0, 0.1);
    private static final Remark BENS =
            Remark.of("r", RemarkKind.FACT, "Four times her weight.").saidBy("ben");

    private static List<Finding> found(Paces paces, boolean away, Remark remark, List<Piece> pieces) {
        Show show = new Show(
                        "Harbour Day",
                        LocalDate.of(2027, 6, 1),
                        new Venue("Nowhere", 52, 0, 0, 90, 200, ZoneId.of("UTC"), Venue.Limits.NONE),
                        DayAir.STANDARD,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(remark))
                .withGaps(new Gaps(50, pieces))
                .withSpeakers(new Speakers(List.of(new Speaker("Ann", false), new Speaker("Ben", away))));
        return UntimedSpeakers.of(show, paces);
    }

    @Test
    void whoSpeaksAtAPaceThatNobodyTimedIsNamed() {
        assertThat(found(new Paces(ANN, List.of(ANN)), false, BENS, List.of()))
                .extracting(Finding::message, Finding::path)
                .containsExactly(tuple(
                        "nobody has timed \"Ben\" here, so the usual 160 words a minute is used; Ctrl+U times a"
                                + " speaker",
                        "speakers[1].name"));
    }

    @Test
    void whoWasTimedOrIsAwayOrHasNothingToSayIsNot() {
        Remark anybodys = Remark.of("r", RemarkKind.FACT, "Four times her weight.");
        assertThat(found(new Paces(ANN, List.of(ANN, BEN)), false, BENS, List.of()))
                .isEmpty();
        assertThat(found(new Paces(ANN, List.of(ANN)), true, BENS, List.of())).isEmpty();
        assertThat(found(new Paces(ANN, List.of(ANN)), false, anybodys, List.of()))
                .isEmpty();
    }

    @Test
    void whoInterpretsOrSaysAPartOfAPieceSpeaksToo() {
        Paces anns = new Paces(ANN, List.of(ANN));
        Remark anybodys = Remark.of("r", RemarkKind.FACT, "Four times her weight.");
        assertThat(found(anns, false, anybodys.translated(new Translation("fr", "Quatre fois.", "Ben")), List.of()))
                .hasSize(1);
        Piece piece = new Piece("p", "Tower", null, List.of(new Piece.Part("Hello.", 0, "Ben", null)));
        assertThat(found(anns, false, anybodys, List.of(piece))).hasSize(1);
    }
}
