package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class ActTimesTest {
    private final ActTimes times = new ActTimes(
            "act",
            "full",
            List.of(
                    new FigureTime("a", 0, 10, 9, 11),
                    new FigureTime("b", 10, 20, 18, 23),
                    new FigureTime("c", 32, 8, 7, 9)));

    @Test
    void totalRunsFromFirstStartToLastEnd() {
        assertThat(times.totalS()).isEqualTo(40);
        assertThat(new ActTimes("act", "full", List.of()).totalS()).isZero();
    }

    @Test
    void totalDoesNotCountWhatIsBeforeTheFirstFigure() {
        assertThat(times.from(0, 5).totalS()).isEqualTo(40);
    }

    @Test
    void figureHoldsItsStartAndNotItsEnd() {
        assertThat(times.at(10).orElseThrow().figureId()).isEqualTo("b");
        assertThat(times.at(9.999).orElseThrow().figureId()).isEqualTo("a");
    }

    @Test
    void nothingIsFlownBeforeBetweenAndAfter() {
        assertThat(times.at(-0.1)).isEmpty();
        assertThat(times.at(31)).isEmpty();
        assertThat(times.at(40)).isEmpty();
    }

    @Test
    void handStepShiftsThatFigureAndLaterOnes() {
        ActTimes moved = times.from(1, 12.5);
        assertThat(moved.figures()).extracting(FigureTime::startS).containsExactly(0.0, 12.5, 34.5);
        assertThat(moved.figures()).extracting(FigureTime::durationS).containsExactly(10.0, 20.0, 8.0);
    }

    @Test
    void earlyStepPastAFigureLeavesTimesInOrder() {
        ActTimes moved = times.from(2, 6);
        assertThat(moved.figures()).extracting(FigureTime::startS).containsExactly(0.0, 6.0, 6.0);
        assertThat(moved.at(7).orElseThrow().figureId()).isEqualTo("c");
    }

    @Test
    void refusesFiguresOutOfOrder() {
        assertThatThrownBy(() -> new ActTimes(
                        "act", "full", List.of(new FigureTime("a", 5, 10, 9, 11), new FigureTime("b", 4, 20, 18, 23))))
                .hasMessageContaining("figure b starts at 4.0 s; it must not start before a, at 5.0 s");
    }

    @Test
    void refusesABandThatDoesNotHoldTheDuration() {
        assertThatThrownBy(() -> new FigureTime("a", 5, 10, 11, 12)).hasMessageContaining("11.0 to 12.0");
    }

    @Test
    void refusesATimeThatIsNoTime() {
        assertThatThrownBy(() -> new FigureTime("a", 5, 0, 0, 0))
                .hasMessage("durationS of a is 0.0; it must be above 0");
        assertThatThrownBy(() -> new FigureTime("a", 5, 10, 0, 12))
                .hasMessage("the band of a is 0.0 to 12.0; it must lie above 0 and hold the duration, 10.0");
        assertThatThrownBy(() -> new FigureTime("a", 5, 10, 9, Double.POSITIVE_INFINITY))
                .hasMessage("the band of a is 9.0 to Infinity; it must lie above 0 and hold the duration, 10.0");
        assertThatThrownBy(() -> new FigureTime("a", Double.NaN, 10, 9, 12))
                .hasMessage("startS of a is NaN; it must be a number");
        assertThatThrownBy(() -> new FigureTime(" ", 5, 10, 9, 12))
                .hasMessage("the figure id is empty; it needs some text");
    }

    @Test
    void bandHoldsItsEndsAndMayBeNoWiderThanOneValue() {
        Band band = new Band(9, 12);

        assertThat(band.holds(9)).isTrue();
        assertThat(band.holds(12)).isTrue();
        assertThat(band.holds(8.999)).isFalse();
        assertThat(band.holds(12.001)).isFalse();
        assertThat(new Band(9, 9).holds(9)).isTrue();
        assertThatThrownBy(() -> new Band(12, 9)).hasMessage("the band is 12.0 to 9.0; low must not be above high");
    }
}
