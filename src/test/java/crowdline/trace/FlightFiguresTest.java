package crowdline.trace;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.show.DayAir;
import crowdline.show.Venue;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import crowdline.telemetry.Reading;
import crowdline.trace.Found.What;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FlightFiguresTest {
    private final Catalogue catalogue = CatalogueFile.shipped();
    private final FigureTrial trial = trial("light aerobatic biplane");
    private final FlightFigures figures = new FlightFigures(catalogue, trial);

    private static FigureTrial trial(String kind) {
        Venue venue = new Venue("here", null, null, null, null, null, ZoneOffset.UTC, Venue.Limits.NONE);
        return new FigureTrial(
                KindsFile.shipped().counted(kind).kind().airframe("a", kind, Sliders.TYPICAL),
                Air.of(DayAir.STANDARD, venue));
    }

    /** A log as a receiver writes it, two metres of noise, five readings a second, level lines between the figures. */
    private final class Log {
        private final SplittableRandom random = new SplittableRandom(4);
        private final List<Reading> readings = new ArrayList<>();
        private double tS;
        private Vec at = new Vec(0, 0, 300);
        private Vec way = new Vec(1, 0, 0);

        Log line(double seconds) {
            for (double t = 0; t < seconds; t += 0.2) {
                read(at);
                at = at.plus(way.times(0.2 * 60));
            }
            return this;
        }

        /** Flown in whatever direction, half as large again. */
        Log figure(String name, double kt) {
            List<Sample> flown = trial.path(
                    catalogue.find(name).orElseThrow().elements(),
                    FlightState.along(new Vec(0, 0, 300), kt * 1852 / 3600, true));
            assertThat(flown).as(name).hasSizeGreaterThan(20);
            Vec from = at;
            for (int i = 0; i < flown.size(); i += 2) {
                Vec p = flown.get(i).place().minus(new Vec(0, 0, 300)).times(1.5);
                at = from.plus(new Vec(way.x() * p.x() - way.y() * p.y(), way.y() * p.x() + way.x() * p.y(), p.z()));
                read(at);
            }
            Vec nose = flown.get(flown.size() - 1).nose();
            way = new Vec(way.x() * nose.x() - way.y() * nose.y(), way.y() * nose.x() + way.x() * nose.y(), 0).unit();
            return this;
        }

        private void read(Vec p) {
            readings.add(new Reading(
                    tS,
                    p.x() + 2 * random.nextGaussian(),
                    p.y() + 2 * random.nextGaussian(),
                    p.z() + 2 * random.nextGaussian(),
                    null,
                    null));
            tS += 0.2;
        }
    }

    private List<Found> found;

    @BeforeAll
    void fly() {
        Log log = new Log();
        log.way = new Vec(0.6, 0.8, 0);
        found = figures.in(log.line(8)
                .figure("loop", 125)
                .line(4)
                .figure("half Cuban", 125)
                .line(5)
                .figure("stall turn", 130)
                .line(4)
                .figure("wing-over", 120)
                .line(9)
                .figure("loop", 125)
                .line(8)
                .readings);
    }

    private List<Found> flown() {
        return found.stream().filter(f -> f.what() == What.FIGURE).toList();
    }

    @Test
    void figuresAreNamedWhateverTheirSizeAndDirection() {
        assertThat(flown())
                .extracting(f -> f.guesses().get(0).name())
                .containsExactly("loop", "half Cuban", "stall turn", "wing-over", "loop");
    }

    @Test
    void aLineBetweenThemIsALineAndNothingStandsBeforeTheFirstOrAfterTheLast() {
        assertThat(found.get(0).what()).isEqualTo(What.FIGURE);
        assertThat(found.get(found.size() - 1).what()).isEqualTo(What.FIGURE);
        assertThat(found).extracting(Found::what).contains(What.LINE);
    }

    @Test
    void whatIsKnownGoesIntoAListAndNothingElse() {
        FigureList list = FlightFigures.list(found);
        ListLine first = list.lines().get(0);
        assertThat(first.figure()).isEqualTo("loop");
        assertThat(first.seconds()).isBetween(8.0, 30.0);
        assertThat(first.text()).contains("timed at");
        assertThat(list.lines()).anySatisfy(line -> {
            assertThat(line.title()).isEqualTo("a line, perhaps with rolls");
            assertThat(line.sure()).isFalse();
            assertThat(line.choices()).containsExactly("low pass", "slow roll");
        });
    }

    @Test
    void chancesOfTheGuessesAreShares() {
        for (Found f : flown()) {
            assertThat(f.guesses()).hasSizeBetween(1, 3);
            double all = f.guesses().stream().mapToDouble(Found.Guess::sure).sum();
            assertThat(all).isBetween(0.05, 1.0);
        }
    }

    @Test
    void levelFlightHoldsNoFigure() {
        assertThat(figures.in(new Log().line(120).readings)).isEmpty();
        assertThat(figures.in(List.of())).isEmpty();
        assertThat(figures.in(List.of(new Reading(0, 0, 0, 0, null, null)))).isEmpty();
    }

    @Test
    void aircraftStandingStillOrSilentForAMinuteHangsNothing() {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            readings.add(new Reading(i, 0, 0, 0, 0.0, 0.0));
        }
        readings.add(new Reading(200, 4000, 0, 300, null, null));
        readings.add(new Reading(200, 4000, 0, 300, null, null));
        assertThat(figures.in(readings)).allSatisfy(f -> assertThat(f.seconds()).isPositive());
    }

    @Test
    void eachKindIsComparedWithWhatItCanFly() {
        Set<String> biplane = names(new KnownShapes(catalogue, trial));
        assertThat(biplane)
                .contains("loop", "stall turn", "spin")
                .doesNotContain("slow roll", "low pass", "formation loop");
        assertThat(names(new KnownShapes(catalogue, trial("old trainer")))).doesNotContain("lomcovak");
    }

    private static Set<String> names(KnownShapes shapes) {
        return shapes.all.stream().map(k -> k.entry().name()).collect(Collectors.toSet());
    }
}
