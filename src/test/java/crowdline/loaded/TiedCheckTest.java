package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.show.check.Finding;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A figure of 20 s of which nothing but its time is known. */
class TiedCheckTest {
    private static List<Finding> check(
            @Nullable MomentName at, @Nullable MomentName until, @Nullable Double earliestS) {
        Remark remark =
                new Remark("why", RemarkKind.EXPLANATION, "Why.", null, at, until, earliestS, null, 1, false, false);
        Figure figure = new Figure("turn", "turn", null, null, null, 20.0, null, null, List.of(), List.of(remark));
        FigureFlight flown =
                new FigureFlight("turn", "turn", false, true, 30, 50, 1, 1, 1, 1, 0, 0, 1, 1, 0, 0, 0, 0, 0, List.of());
        Flight flight = new Flight("act", "full", List.of(flown), List.of(), List.of());
        return TiedCheck.of(figure, flown, flight.samples(), "acts[0].figures[0]");
    }

    @Test
    void aMomentThatIsNotThereIsToldWithThoseThatAre() {
        assertThat(check(MomentName.first(MomentKind.PIVOTS), null, null))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.path()).isEqualTo("acts[0].figures[0].remarks[0].at");
                    assertThat(f.message())
                            .isEqualTo(
                                    "the at is \"pivots\"; the moments of \"turn\" are begins, flies out. Until that is put"
                                            + " right the remark goes by the rule of its kind");
                });
        assertThat(check(null, new MomentName(MomentKind.BEGINS, 2), null))
                .singleElement()
                .satisfies(f -> assertThat(f.path()).endsWith(".until"));
    }

    @Test
    void momentsTheWrongWayRoundAreTold() {
        MomentName begins = MomentName.first(MomentKind.BEGINS);
        MomentName ends = MomentName.first(MomentKind.FLIES_OUT);
        assertThat(check(ends, begins, null))
                .singleElement()
                .satisfies(f -> assertThat(f.message())
                        .isEqualTo("the until is \"begins\", at 0.0 s; it must come after \"flies out\", at 20.0 s"));
        assertThat(check(begins, ends, 25.0)).hasSize(1);
        assertThat(check(begins, ends, 5.0)).isEmpty();
    }
}
