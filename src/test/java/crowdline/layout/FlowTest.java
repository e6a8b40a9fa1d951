package crowdline.layout;

import static crowdline.layout.LayoutTest.a;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.measure.Units;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Between two figures a pilot flies on where that does, and comes round only for what is not to be had ahead. */
class FlowTest {
    private static List<Piece> pieces(String kind, String... figures) {
        LayoutTest.Wanted[] wanted = new LayoutTest.Wanted[figures.length];
        for (int i = 0; i < figures.length; i++) {
            wanted[i] = a(figures[i]);
        }
        return LayoutTest.laid(kind, wanted).pieces();
    }

    private static long turns(List<Piece> pieces) {
        return pieces.stream()
                .filter(piece -> piece.transit() == Transit.TURNS_BACK)
                .count();
    }

    @ParameterizedTest
    @CsvSource({
        "light aerobatic biplane, half roll, slow roll",
        "old trainer, barrel roll, slow roll",
        "jet trainer, steep turn, half Cuban",
        "piston fighter, barrel roll, barrel roll"
    })
    void heightAndSpeedThatAreHadAheadAreNotComeRoundFor(String kind, String first, String second) {
        assertThat(turns(pieces(kind, first, second))).isZero();
    }

    @Test
    void aSlowPassIsComeRoundToQuicklyAndThenSlowedDownFor() {
        LaidOut laid =
                LayoutTest.laid("jet trainer", a("loop"), a("low pass").kt(120).toRight(false));

        assertThat(laid.findings()).isEmpty();
        assertThat(laid.seconds()).isLessThan(240);
    }

    @Test
    void aPassIsFlownAlongTheDisplayLineHoweverFarAwayTheFigureBeforeItEnded() {
        List<Piece> pieces = pieces("piston fighter", "wing-over", "low pass");
        Piece wingOver = pieces.stream()
                .filter(p -> p.wish() != null && p.wish().name().equals("wing-over"))
                .findFirst()
                .orElseThrow();
        Piece pass = pieces.get(pieces.size() - 1);

        assertThat(wingOver.to().place().y()).isGreaterThan(900);
        assertThat(pass.from().place().y()).isBetween(-15.0, 300.0);
    }

    @Test
    void climbsNoHigherThanItNeedsForASpeedThatTheEngineGives() {
        List<Piece> pieces = pieces("piston fighter", "take-off", "aileron roll", "loop");
        double highest = pieces.stream()
                .filter(Piece::isTransit)
                .mapToDouble(p -> p.to().place().z())
                .max()
                .orElseThrow();
        Piece roll = pieces.stream()
                .filter(p -> p.wish() != null && p.wish().name().equals("aileron roll"))
                .findFirst()
                .orElseThrow();

        assertThat(highest - roll.from().place().z()).isLessThan(200);
    }

    @Test
    void anActWhoseFirstPieceIsOnlyTimedBeginsAsHighAsItsFirstFigure() {
        Wish timed = new Wish(
                "run-in", "run-in", List.of(), false, null, null, null, null, null, null, 15.0, Wish.Role.FIGURE);
        Wish dive = a("dive").kt(280).made("figure-1");
        RandomLists.Case any = new RandomLists(1)
                .next(RandomLists.kinds().stream()
                        .filter(k -> k.name().equals("piston fighter"))
                        .findFirst()
                        .orElseThrow());
        LaidOut laid = new Layout(any.trial(), any.area()).of(List.of(timed, dive));
        Piece begun = laid.pieces().get(laid.pieces().size() - 1);

        assertThat(Objects.requireNonNull(begun.wish()).name()).isEqualTo("dive");
        assertThat(laid.entry().place().z())
                .isCloseTo(begun.from().place().z(), org.assertj.core.data.Offset.offset(Units.mFromFt(100)));
        assertThat(turns(laid.pieces())).isZero();
    }

    @Test
    void whatIsTooHardAtItsUsualSpeedIsBegunMoreSlowly() {
        assertThat(LayoutTest.laid("old trainer", a("loop"), a("45 degree down-line with flick"))
                        .findings())
                .isEmpty();
    }
}
