package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Spread;
import java.util.List;
import org.junit.jupiter.api.Test;

class PredictedTimesTest {
    private static final Spread.Band NOTHING_FLOWN = new Spread.Band(Double.NaN, Double.NaN, Double.NaN);

    @Test
    void timesAreThoseOfTheFlight() {
        Flight flight = flight(figure("a", true, 0, 10), figure("b", true, 10, 25));
        ActTimes times = PredictedTimes.of(flight, List.of(new Spread.Band(9, 10, 11.5), new Spread.Band(14, 15, 17)));
        assertThat(times)
                .isEqualTo(new ActTimes(
                        "act",
                        "full",
                        List.of(new FigureTime("a", 0, 10, 9, 11.5), new FigureTime("b", 10, 15, 14, 17))));
    }

    @Test
    void bandBesideTheDurationIsStretchedToHoldIt() {
        assertThat(only(figure("a", true, 0, 10), new Spread.Band(10.5, 11, 12)))
                .isEqualTo(new FigureTime("a", 0, 10, 10, 12));
        assertThat(only(figure("a", true, 0, 10), new Spread.Band(8, 9, 9.5)))
                .isEqualTo(new FigureTime("a", 0, 10, 8, 10));
    }

    @Test
    void figureThatIsOnlyTimedHasAWideBand() {
        FigureTime time = only(figure("a", false, 0, 80), new Spread.Band(80, 80, 80));
        assertThat(time.lowS()).isEqualTo(64);
        assertThat(time.highS()).isEqualTo(96);
    }

    @Test
    void figureNoFlightGotToHasAWideBand() {
        FigureTime time = only(figure("a", true, 0, 10), NOTHING_FLOWN);
        assertThat(time.lowS()).isEqualTo(8);
        assertThat(time.highS()).isEqualTo(12);
    }

    @Test
    void figureOfNoLengthStillHasATime() {
        FigureTime time = only(figure("a", true, 3, 3), NOTHING_FLOWN);
        assertThat(time.durationS()).isPositive().isLessThan(0.5);
        assertThat(time.lowS()).isPositive().isLessThanOrEqualTo(time.durationS());
        assertThat(time.highS()).isGreaterThanOrEqualTo(time.durationS());
    }

    private static FigureTime only(FigureFlight figure, Spread.Band band) {
        return PredictedTimes.of(flight(figure), List.of(band)).figures().get(0);
    }

    private static Flight flight(FigureFlight... figures) {
        return new Flight("act", "full", List.of(figures), List.of(), List.of());
    }

    private static FigureFlight figure(String id, boolean simulated, double startS, double endS) {
        return new FigureFlight(
                id, id, simulated, true, startS, endS, 60, 60, 50, 70, 100, 300, 4, 1, 300, 290, 0, 0, 0, List.of());
    }
}
