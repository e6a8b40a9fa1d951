package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.moment.FigureMoments;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is ahead keeps its place against its figure where that moves, and its second where it only drifts. */
class CarriedTest {
    private static Slot slot(String figureId, double startS) {
        return new Slot(figureId, startS, startS + 10, startS + 9, startS + 11, List.of(), FigureMoments.timed(10));
    }

    private static Placed placed(String id, @Nullable String figureId, double startS) {
        return new Placed(id, figureId, RemarkKind.FACT, RemarkForm.FULL, startS, startS + 3, false);
    }

    private static List<Double> starts(double byS) {
        Plan before = new Plan(
                List.of(
                        placed("begun", "loop", 99),
                        placed("of the loop", "loop", 121),
                        placed("loose", null, 126),
                        placed("of the roll", "roll", 131)),
                List.of(),
                5,
                6,
                true);
        return Carried.of(
                        before,
                        List.of(slot("loop", 120), slot("roll", 130)),
                        List.of(slot("loop", 120 + byS), slot("roll", 130 + byS)),
                        100)
                .placed()
                .stream()
                .map(Placed::startS)
                .toList();
    }

    @Test
    void figuresThatBeginSoonerTakeTheirWordsAlong() {
        assertThat(starts(-20)).containsExactly(99.0, 101.0, 111.0, 126.0);
    }

    @Test
    void andThoseThatBeginLater() {
        assertThat(starts(4)).containsExactly(99.0, 125.0, 126.0, 135.0);
    }

    @Test
    void aDriftMovesNothing() {
        assertThat(starts(1)).containsExactly(99.0, 121.0, 126.0, 131.0);
        assertThat(starts(-1.2)).containsExactly(99.0, 121.0, 126.0, 131.0);
    }

    @Test
    void aFigureThatIsNoLongerThereMovesNothing() {
        Plan before = new Plan(List.of(placed("of the loop", "loop", 121)), List.of(), 0, 3, true);
        assertThat(Carried.of(before, List.of(slot("loop", 120)), List.of(slot("roll", 90)), 80)
                        .placed())
                .isEqualTo(before.placed());
    }
}
