package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.Catalogue;
import crowdline.show.CatalogueEntry;
import crowdline.show.Figure;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
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

    @ParameterizedTest
    @MethodSource("simulated")
    void coarseStepsKeepItsDuration(CatalogueEntry entry) {
        Double usual = entry.minEntryKt();
        Predictor predictor = predictor(entry, usual == null ? 120 : usual);
        double fine = predictor.predict().figures().get(0).durationS();
        assertThat(predictor.durations(Variation.NONE)[0]).isCloseTo(fine, within(0.002));
    }

    static Flight fly(CatalogueEntry entry, double kt) {
        return predictor(entry, kt).predict();
    }

    private static Predictor predictor(CatalogueEntry entry, double kt) {
        return Rig.predictor(new Catalogue(List.of(entry)), 2000, kt, Figure.of("it", entry.name()));
    }
}
