package crowdline.layout;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.air.StandardAtmosphere;
import crowdline.flight.air.Wind;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.show.CatalogueFile;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A glider spends height for speed between two figures; it does not come round for every one of them. */
class GliderFlowTest {
    private static LaidOut laid(String... figures) {
        return LayoutTest.laid(
                "aerobatic glider", Arrays.stream(figures).map(LayoutTest::a).toArray(LayoutTest.Wanted[]::new));
    }

    private static long turns(LaidOut laid) {
        return laid.pieces().stream().filter(Piece::turns).count();
    }

    @Test
    void oneLoopFollowsAnotherOnceThereIsSpeed() {
        assertThat(turns(laid("dive", "loop", "loop"))).isZero();
        assertThat(turns(laid("loop", "stall turn", "loop"))).isZero();
    }

    @Test
    void anActOfSixFiguresTurnsBackOnceAtMost() {
        LaidOut laid = laid("loop", "stall turn", "loop", "half Cuban", "spin", "low pass");

        assertThat(turns(laid)).isLessThan(2);
        assertThat(laid.seconds()).isLessThan(180);
        assertThat(laid.pieces().get(0).transit()).isEqualTo(Transit.RUNS_IN);
    }

    /** It was said of each figure by itself that it tops the ceiling, even of a low pass. */
    @Test
    void aCeilingThatTheWholeActTopsIsSaidOnce() {
        LaidOut laid = LayoutTest.laid(
                "aerobatic glider",
                new Venue.Limits(null, 1500.0, null, null),
                Stream.of("loop", "stall turn", "loop", "half Cuban", "spin", "loop", "low pass")
                        .map(LayoutTest::a)
                        .toArray(LayoutTest.Wanted[]::new));

        assertThat(laid.findings())
                .extracting(LaidOut.Finding::message)
                .filteredOn(said -> said.contains("ceiling"))
                .singleElement()
                .asString()
                .matches("without an engine this act takes [\\d,]+ ft, and the ceiling is 1,500 ft: it needs a ceiling"
                        + " that high, or fewer figures");
    }

    /** Going with the wind over the top, or against it, it was said to have too little speed whatever it began with. */
    @ParameterizedTest
    @CsvSource({"90, 5", "270, 5", "90, 13", "270, 13", "45, 18", "180, 18"})
    void windTakesNeitherHumptyBumpNorQuarterClover(double fromDeg, double kt) {
        Airframe glider = LayoutTest.trial("aerobatic glider").airframe();
        FigureTrial trial = new FigureTrial(glider, new Air(new StandardAtmosphere(), Wind.steady(fromDeg, kt, 90)));
        for (String name : List.of("humpty bump", "quarter clover")) {
            CatalogueEntry entry = CatalogueFile.shipped().find(name).orElseThrow();
            double usualKt = Objects.requireNonNull(
                    Objects.requireNonNull(entry.enters()).kt(glider.usual(), glider.stallKt()));

            assertThat(DoubleStream.of(0, 10, 20, 30)
                            .mapToObj(more ->
                                    FlightState.along(new Vec(0, 0, 200), Units.mpsFromKt(usualKt + more), true)))
                    .as(name)
                    .anyMatch(from -> trial.drawn(entry.elements(), from).isWell());
        }
    }
}
