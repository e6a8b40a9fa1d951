package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.show.DayAir;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every figure of the shipped catalogue that is simulated can be flown by a strong aeroplane from its usual speed. */
public class CatalogueFlightTest {
    public static Stream<CatalogueEntry> simulated() {
        return CatalogueFile.shipped().entries().stream()
                .filter(e -> !e.elements().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("simulated")
    void strongMonoplaneFliesIt(CatalogueEntry entry) {
        Flight flight = fly(entry);
        FigureFlight f = flight.figures().get(0);
        assertThat(f.completed()).as(flight.findings().toString()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("simulated")
    void coarseStepsKeepItsDuration(CatalogueEntry entry) {
        Predictor predictor = predictor(entry);
        double fine = predictor.predict().figures().get(0).durationS();
        assertThat(predictor.durations(Variation.NONE)[0]).isCloseTo(fine, within(0.005));
    }

    public static Flight fly(CatalogueEntry entry) {
        return predictor(entry).predict();
    }

    private static Predictor predictor(CatalogueEntry entry) {
        Airframe strong = Rig.kind("strong aerobatic monoplane");
        return Rig.predictor(
                strong,
                new Catalogue(List.of(entry)),
                3000,
                Rig.entersKt(entry, strong),
                DayAir.STANDARD,
                Figure.of("it", entry.name()));
    }
}
