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
}
