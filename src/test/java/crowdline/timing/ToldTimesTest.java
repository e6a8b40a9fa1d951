package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The worked examples are by hand: what lies between two times of a list takes as long as the list says. */
class ToldTimesTest {
    private static ActTimes predicted(Object... idsAndSeconds) {
        List<FigureTime> times = new ArrayList<>();
        double atS = 0;
        for (int i = 0; i < idsAndSeconds.length; i += 2) {
            double seconds = ((Number) idsAndSeconds[i + 1]).doubleValue();
            times.add(new FigureTime((String) idsAndSeconds[i], atS, seconds, 0.9 * seconds, 1.1 * seconds));
            atS += seconds;
        }
        return new ActTimes("act", "full", times);
    }

    private static ToldTimes told(Map<String, Double> begins) {
        return new ToldTimes(begins, List.of("in", "loop", "way", "spin", "pass"), Set.of("in", "way"));
    }

    private static List<Double> starts(ActTimes times) {
        return times.figures().stream().map(FigureTime::startS).toList();
    }

    private final ActTimes act = predicted("in", 6, "loop", 12, "way", 20, "spin", 10, "pass", 8);

    @Test
    void theWayGivesWhatIsTooMuch() {
        ActTimes times = told(Map.of("loop", 0.0, "spin", 24.0)).on(act);

        assertThat(starts(times)).containsExactly(0.0, 6.0, 18.0, 30.0, 40.0);
        assertThat(times.figures()).extracting(FigureTime::durationS).containsExactly(6.0, 12.0, 12.0, 10.0, 8.0);
    }

    @Test
    void theWayTakesWhatIsLeft() {
        ActTimes times = told(Map.of("loop", 30.0, "spin", 70.0)).on(act);

        assertThat(starts(times)).containsExactly(0.0, 6.0, 18.0, 46.0, 56.0);
    }

    /** 14 s for 12 s of loop and at least 8 s of way: both take 14/20 of that. */
    @Test
    void whatTheWayCannotGiveIsTakenFromAll() {
        ActTimes times = told(Map.of("loop", 0.0, "spin", 14.0)).on(act);

        assertThat(times.figures().get(1).durationS()).isCloseTo(8.4, within(1e-9));
        assertThat(times.figures().get(2).durationS()).isCloseTo(5.6, within(1e-9));
        assertThat(times.figures().get(3).startS()).isCloseTo(20, within(1e-9));
    }

    @Test
    void aFigureIsNotMadeLongerSoThereIsTimeBetween() {
        ActTimes times = told(Map.of("spin", 0.0, "pass", 25.0)).on(act);

        assertThat(times.figures().get(3)).isEqualTo(act.figures().get(3));
        assertThat(starts(times)).containsExactly(0.0, 6.0, 18.0, 38.0, 63.0);
    }

    @Test
    void whereTheTimesDoNotRiseTheySayNothing() {
        assertThat(told(Map.of("loop", 30.0, "spin", 20.0)).on(act)).isEqualTo(act);
        assertThat(told(Map.of()).on(act)).isEqualTo(act);
    }

    /** What is flown without the way takes less time than the list has for all of it. */
    @Test
    void whereSomethingIsLeftOutTheListSaysNothing() {
        ActTimes shorter = predicted("in", 6, "loop", 12, "spin", 10, "pass", 8);

        assertThat(starts(told(Map.of("loop", 0.0, "spin", 24.0)).on(shorter))).containsExactly(0.0, 6.0, 18.0, 28.0);
    }

    @Test
    void aBandHoldsTheStepsInWhichListsAreWritten() {
        FigureTime way =
                told(Map.of("loop", 0.0, "spin", 24.0)).on(act).figures().get(2);

        assertThat(way.lowS()).isEqualTo(9.5);
        assertThat(way.highS()).isEqualTo(14.5);
    }

    @Test
    void itSaysWhatTheListAndThePredictionHave() {
        assertThat(told(Map.of("loop", 0.0, "spin", 24.0)).stretches(act))
                .containsExactly(new ToldTimes.Stretch("loop", 24, 32));
    }
}
