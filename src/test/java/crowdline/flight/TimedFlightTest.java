package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Acts of which only times are known: one that does not say where it begins, and one of an aircraft nobody computes. */
class TimedFlightTest {
    private static final Placing ENTRY = new Placing(0, 0, 1000, 120, Placing.Heading.RIGHT);

    private static Figure timed(String id, String figure, @Nullable Double seconds) {
        return new Figure(id, figure, null, null, null, seconds, null, null, List.of(), List.of());
    }

    private static Predictor predictor(Aircraft aircraft, @Nullable Placing entry, Figure... figures) {
        List<Figure> order = List.of(figures);
        Act act = new Act(
                "act",
                "Test act",
                "pilot",
                aircraft.id(),
                LocalTime.NOON,
                10,
                entry,
                order,
                List.of(new Variant("full", null, order.stream().map(Figure::id).toList())),
                List.of());
        Show show = new Show(
                "Test",
                LocalDate.of(2027, 6, 1),
                new Venue("Nowhere", 52, 0, 0, 90, 200, ZoneId.of("UTC"), Venue.Limits.NONE),
                DayAir.STANDARD,
                List.of(aircraft),
                List.of(),
                List.of(act),
                List.of());
        return new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0));
    }

    private static Kind onlyTimed() {
        return KindsFile.shipped().all().stream()
                .filter(kind -> kind.outline() == null)
                .findFirst()
                .orElseThrow();
    }

    private static void hasOnlyTimes(Predictor predictor, double... seconds) {
        Flight flight = predictor.predict();
        assertThat(flight.samples()).isEmpty();
        assertThat(flight.findings()).isEmpty();
        double tS = 0;
        for (int i = 0; i < seconds.length; i++) {
            FigureFlight figure = flight.figures().get(i);
            assertThat(figure.startS()).isEqualTo(tS);
            assertThat(figure.durationS()).isEqualTo(seconds[i]);
            assertThat(figure.simulated()).isFalse();
            assertThat(figure.completed()).isTrue();
            assertThat(figure.isPlaced()).isFalse();
            tS = figure.endS();
        }
        assertThat(flight.figures()).hasSize(seconds.length);
        assertThat(flight.totalS()).isEqualTo(tS);
        assertThat(predictor.durations(Variation.NONE)).containsExactly(seconds);
    }

    @Test
    void anActThatDoesNotSayWhereItBeginsHasTheTimesOfItsFigures() {
        hasOnlyTimes(predictor(Rig.biplane(), null, timed("a", "loop", 30.0), timed("b", "slow roll", 12.5)), 30, 12.5);
    }

    @Test
    void anAircraftNobodyComputesHasTimesWhereItsFiguresHaveThem() {
        TimedAircraft team = new TimedAircraft("team", "Invented team", onlyTimed(), 4);
        hasOnlyTimes(predictor(team, ENTRY, timed("a", "loop", 30.0), timed("b", "slow roll", null)), 30, 0);
        hasOnlyTimes(predictor(team, null, timed("a", "loop", null), timed("b", "slow roll", 9.0)), 0, 9);
    }

    @Test
    void figuresToComputeNeedToKnowWhereTheyBegin() {
        assertThatThrownBy(() -> predictor(Rig.biplane(), null, timed("a", "loop", 30.0), timed("b", "loop", null)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("act act does not say where it begins");
    }

    @Test
    void aFigureWithATimeIsNotFlownHoweverItMayBe() {
        Predictor both = predictor(Rig.biplane(), ENTRY, timed("a", "loop", null), timed("b", "loop", 20.0));
        assertThat(both.elements().get(0)).isNotEmpty();
        assertThat(both.elements().get(1)).isEmpty();
        List<FigureFlight> figures = both.predict().figures();
        assertThat(figures.get(0).simulated()).isTrue();
        assertThat(figures.get(1).simulated()).isFalse();
        assertThat(figures.get(1).durationS()).isEqualTo(20);
    }
}
