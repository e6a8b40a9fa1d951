package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Rig;
import crowdline.measure.Units;
import crowdline.show.DayAir;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Height and speed trade against each other, drag takes its share, and only thrust adds: over acts drawn at random. */
class EnergyTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final List<Airframe> AIRFRAMES = List.of(Rig.biplane(), Rig.monoplane(), Rig.trainer());
    private static final int FIGURES = 12;
    /** What the handing over from one element to the next and the samples' own rounding may add, metres. */
    private static final double ROUNDING_M = 0.02;

    static Stream<Long> seeds() {
        return LongStream.rangeClosed(1, 60).boxed();
    }

    /** No source: conservation of energy. An act flies on after a figure it cannot fly, so only those flown count. */
    @ParameterizedTest
    @MethodSource("seeds")
    void energyHeightNeverRisesFasterThanThrustAllows(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Airframe airframe = AIRFRAMES.get(random.nextInt(AIRFRAMES.size()));
        double kt = 110 + random.nextDouble() * (airframe.neverExceedKt() - 120);
        Flight flight = Rig.predictor(airframe, CATALOGUE, 4000, kt, DayAir.STANDARD, figures(random))
                .predict();
        double weightN = airframe.massKg() * Units.G_MPS2;
        int seen = 0;
        for (FigureFlight figure : flight.figures()) {
            if (figure.completed() && figure.simulated()) {
                seen += check(flight.samples(), figure, weightN);
            }
        }
        assertThat(seen).as("samples looked at").isGreaterThan(20);
    }

    private static int check(List<Sample> samples, FigureFlight figure, double weightN) {
        int seen = 0;
        for (int i = 1; i < samples.size(); i++) {
            Sample a = samples.get(i - 1);
            Sample b = samples.get(i);
            if (a.tS() >= figure.startS() && b.tS() <= figure.endS()) {
                double most = Math.max(a.thrustN() * a.speedMps(), b.thrustN() * b.speedMps()) / weightN;
                assertThat(energyM(b) - energyM(a))
                        .as("%s at %.1f s", figure.name(), b.tS())
                        .isLessThanOrEqualTo(Math.max(most, 0) * (b.tS() - a.tS()) + ROUNDING_M);
                seen++;
            }
        }
        return seen;
    }

    private static double energyM(Sample s) {
        return s.place().z() + s.speedMps() * s.speedMps() / (2 * Units.G_MPS2);
    }

    private static Figure[] figures(SplittableRandom random) {
        List<CatalogueEntry> flown = CATALOGUE.entries().stream()
                .filter(e -> !e.elements().isEmpty())
                .toList();
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < FIGURES; i++) {
            CatalogueEntry entry = flown.get(random.nextInt(flown.size()));
            figures.add(Figure.of("f" + i, entry.name()));
        }
        return figures.toArray(Figure[]::new);
    }
}
