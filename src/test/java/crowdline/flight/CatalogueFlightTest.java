package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Act;
import crowdline.show.Catalogue;
import crowdline.show.CatalogueEntry;
import crowdline.show.DayAir;
import crowdline.show.Figure;
import crowdline.show.Placing;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.storage.CatalogueFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every figure of the shipped catalogue that is simulated can be flown by the light biplane from its usual speed. */
class CatalogueFlightTest {
    static Stream<CatalogueEntry> simulated() {
        return CatalogueFile.shipped().entries().stream()
                .filter(e -> !e.elements().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("simulated")
    void lightBiplaneFliesIt(CatalogueEntry entry) {
        Double usual = entry.minEntryKt();
        Flight flight = fly(entry, usual == null ? 120 : usual);
        FigureFlight f = flight.figures().get(0);
        assertThat(f.completed()).as(flight.findings().toString()).isTrue();
    }

    static Flight fly(CatalogueEntry entry, double kt) {
        Figure figure = Figure.of("it", entry.name());
        Act act = new Act(
                "act",
                "Test act",
                "pilot",
                "biplane",
                LocalTime.NOON,
                10,
                new Placing(0, 0, 2000, kt, Placing.Heading.RIGHT),
                List.of(figure),
                List.of(new Variant("full", null, List.of("it"))),
                List.of());
        Venue venue = new Venue("Nowhere", 52, 0, 0, 90, 200, ZoneId.of("UTC"), Venue.Limits.NONE);
        Show show = new Show(
                "Test",
                LocalDate.of(2027, 6, 1),
                venue,
                DayAir.STANDARD,
                List.of(Rig.biplane()),
                List.of(),
                List.of(act),
                List.of(),
                List.of(),
                Map.of(),
                null);
        return new Predictor(
                        show, new Catalogue(List.of(entry)), act, act.variants().get(0))
                .predict();
    }
}
