package crowdline.trace;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.body.Vec;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.show.DayAir;
import crowdline.show.Venue;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import crowdline.telemetry.Reading;
import crowdline.trace.Found.Guess;
import crowdline.trace.Found.What;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FlightFiguresTest {
    private final Catalogue catalogue = CatalogueFile.shipped();
    private final FigureTrial trial = trial("light aerobatic biplane");
    private final FlightFigures figures = new FlightFigures(catalogue, trial);

    static FigureTrial trial(String kind) {
        Venue venue = new Venue("here", null, null, null, null, null, ZoneOffset.UTC, Venue.Limits.NONE);
        return new FigureTrial(
                KindsFile.shipped().counted(kind).kind().airframe("a", kind, Sliders.TYPICAL),
                Air.of(DayAir.STANDARD, venue));
    }

    /** Sinks and climbs by turns as a turn flown by hand does, five times on the way round. */
    private Log steepTurn(Log log) {
        double radius = 130;
        Vec from = log.at;
        for (double t = 0; t < 20; t += 0.2) {
            double angle = 2 * Math.PI * t / 20;
            log.at = new Vec(
                    from.x() + radius * Math.sin(angle),
                    from.y() + radius * (1 - Math.cos(angle)),
                    from.z() + 3 * Math.sin(5 * angle));
            log.read(log.at);
        }
        return log;
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

    /** No track shows the half turn pushed, the flick, the roll in the line or the odd spin, and displays seldom have them. */
    @ParameterizedTest
    @CsvSource({
        "outside loop,150,loop",
        "outside half loop,125,half loop with roll out on top",
        "flat spin,60,spin",
        "45 degree down-line with flick,125,half Cuban",
        "vertical roll down,150,humpty bump"
    })
    void ofFiguresOnOnePathTheUsualOneIsMeant(String flown, double kt, String meant) {
        List<Found> one = figures.in(new Log().line(8).figure(flown, kt).line(8).readings);
        List<String> names = one.stream()
                .filter(f -> f.what() == What.FIGURE)
                .flatMap(f -> f.guesses().stream().map(Guess::name))
                .toList();
        assertThat(names).contains(meant);
        assertThat(names.subList(0, names.indexOf(meant))).doesNotContain(flown);
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
        assertThat(first.seconds()).isNull();
        assertThat(first.text()).matches("flight log, at 0:0\\d for 1\\d s, \\d+% sure");
        assertThat(list.lines()).anySatisfy(line -> {
            assertThat(line.title()).isEqualTo("a line, perhaps with rolls");
            assertThat(line.sure()).isFalse();
            assertThat(line.seconds()).isBetween(3.0, 12.0);
            assertThat(line.choices()).containsExactly("low pass", "slow roll");
        });
    }

    /** It was taken for as many ways as there were moments in it at which it was level. */
    @Test
    void steepTurnThatIsNotQuiteLevelIsOneFigure() {
        List<Found> one = figures.in(steepTurn(new Log().line(8)).line(8).readings);
        assertThat(one).hasSize(1);
        assertThat(one.get(0).guesses()).extracting(Found.Guess::name).contains("steep turn");
        assertThat(one.get(0).seconds()).isBetween(15.0, 25.0);
    }

    /** Either has a place among the first guesses only if both together have no more than one. */
    @Test
    void variantOnTheSamePathIsNamedOnce() {
        KnownShapes known = new KnownShapes(catalogue, trial("strong aerobatic monoplane"));
        assertThat(known.plainest("tail slide wheels up")).isEqualTo("tail slide");
        assertThat(known.plainest("tail slide")).isEqualTo("tail slide");
        assertThat(known.plainest("humpty bump with push top")).isEqualTo("humpty bump with push top");
    }

    /** The layout puts ways where they are needed; in a list they would be flown twice. */
    @Test
    void wayIsNoFigureThatIsLookedFor() {
        assertThat(ShapeTest.names(new KnownShapes(catalogue, trial))).doesNotContain("reposition");
    }

    /** Only as large as usual and between lines, for so flat a path is a way as well. */
    @Test
    void derryTurnIsAFigure() {
        assertThat(firsts(new Log()
                        .line(9)
                        .figure("loop", 125)
                        .line(9)
                        .figure("Derry turn", 120, 1)
                        .line(9)))
                .containsExactly("loop", "Derry turn");
    }

    /** Begun faster than at its usual speed, as it cannot be flown from that. */
    @Test
    void figureThatNeedsMoreSpeedIsKnownToo() {
        assertThat(ShapeTest.names(new KnownShapes(catalogue, trial("fast jet"))))
                .contains("wing-over", "stall turn");
        assertThat(ShapeTest.names(new KnownShapes(catalogue, trial("aerobatic glider"))))
                .contains("quarter clover");
    }

    /** As {@code FindTrial} prints: of what was said to be so sure so much was right. */
    @Test
    void whatIsOnItsOwnIsSureAndWhatHasDoublesIsNot() {
        assertThat(flown().get(0).guesses().get(0).sure()).as("loop").isBetween(0.6, 0.86);
        assertThat(flown().get(3).guesses().get(0).sure()).as("wing-over").isBetween(0.85, 0.97);
    }

    @Test
    void whatIsNotRightInNineOfTenHasASecondName() {
        List<Guess> names = List.of(new Guess("loop", 0.79), new Guess("avalanche", 0.1));
        List<Guess> surer = List.of(new Guess("loop", 0.81), new Guess("avalanche", 0.1));
        FigureList list = FlightFigures.list(
                List.of(new Found(What.FIGURE, 0, 12, names), new Found(What.FIGURE, 20, 32, surer)));
        assertThat(list.lines().get(0).choices()).containsExactly("loop", "avalanche");
        assertThat(list.lines().get(1).choices()).isEmpty();
    }

    @Test
    void twoHalfCubansWithNothingBetweenAreACubanEightAndWithALineAreNot() {
        assertThat(firsts(new Log()
                        .line(8)
                        .figure("half Cuban", 125)
                        .figure("half Cuban", 125)
                        .line(8)))
                .containsExactly("Cuban eight");
        assertThat(firsts(new Log()
                        .line(8)
                        .figure("half Cuban", 125)
                        .line(9)
                        .figure("half Cuban", 125)
                        .line(8)))
                .containsExactly("half Cuban", "half Cuban");
    }

    /** A half loop with the dive after it is as high as a half Cuban, and as steep. */
    @Test
    void halfLoopAndADiveAreNoHalfCuban() {
        assertThat(firsts(new Log()
                        .line(8)
                        .figure("half loop with roll out on top", 125)
                        .line(3)
                        .figure("dive", 80)
                        .line(8)))
                .first()
                .isEqualTo("half loop with roll out on top");
    }

    /** Noise of an aircraft that rolls over the grass was a dive, at nine metres a second. */
    @Test
    void taxiingHoldsNoFigure() {
        SplittableRandom random = new SplittableRandom(9);
        List<Reading> log = new ArrayList<>();
        for (int t = 0; t < 400; t++) {
            log.add(new Reading(
                    t,
                    9 * (t % 100) + 2 * random.nextGaussian(),
                    2 * random.nextGaussian(),
                    3 * random.nextGaussian(),
                    null,
                    null));
        }
        Log flown = new Log().line(20).figure("loop", 125).line(8);
        flown.readings.forEach(r -> log.add(new Reading(r.tS() + 400, r.alongM(), r.awayM(), r.heightM(), null, null)));
        List<List<Found>> flights = figures.flights(log);
        assertThat(flights).hasSize(1);
        assertThat(flights.get(0)).hasSize(1);
        assertThat(flights.get(0).get(0).startS()).isBetween(415.0, 425.0);
    }

    @Test
    void flightsOfOneLogAreToldApartAndTheOneWithTheMostFiguresIsTaken() {
        List<Reading> one = new Log().line(8).figure("loop", 125).line(8).readings;
        List<Reading> other = new Log()
                .line(8)
                .figure("loop", 125)
                .line(8)
                .figure("half Cuban", 125)
                .line(8)
                .readings;
        List<Reading> log = new ArrayList<>(one);
        double landed = one.get(one.size() - 1).tS();
        for (int t = 1; t < 120; t++) {
            log.add(new Reading(landed + t, 900, 0, 0, null, null));
        }
        other.forEach(r -> log.add(new Reading(r.tS() + landed + 120, r.alongM(), r.awayM(), r.heightM(), null, null)));
        assertThat(figures.flights(log)).hasSize(2);
        assertThat(figures.in(log))
                .filteredOn(f -> f.what() == What.FIGURE)
                .extracting(f -> f.guesses().get(0).name())
                .containsExactly("loop", "half Cuban");
    }

    @Test
    void readingsFarApartMakeNothingSure() {
        Log log = new Log()
                .line(8)
                .figure("wing-over", 120)
                .line(8)
                .figure("wing-over", 120)
                .line(8);
        List<Reading> coarse = new ArrayList<>();
        for (int i = 0; i < log.readings.size(); i += 20) {
            coarse.add(log.readings.get(i));
        }
        assertThat(FlightFigures.usualStepS(coarse)).isBetween(3.9, 4.1);
        assertThat(figures.in(coarse))
                .allSatisfy(f -> assertThat(f.guesses())
                        .allSatisfy(g -> assertThat(g.sure()).isLessThan(0.51)));
    }

    private List<String> firsts(Log log) {
        return firsts(figures, log);
    }

    static List<String> firsts(FlightFigures figures, Log log) {
        return figures.in(log.readings).stream()
                .filter(f -> f.what() == What.FIGURE)
                .map(f -> f.guesses().get(0).name())
                .toList();
    }

    /** It was left out, as coming and going was; only a turn and a line as low and as fast tell of it. */
    @Test
    void passAfterTheLastFigureIsAPassIfItIsLongOrBehindATurn() {
        Log pass = new Log().line(8).figure("loop", 125).line(7).figure("loop", 125);
        assertThat(kinds(pass.line(12))).containsExactly(What.FIGURE, What.LINE, What.FIGURE, What.LINE);
        Log shorter = new Log().line(8).figure("loop", 125).line(7).figure("loop", 125);
        assertThat(kinds(shorter.line(6))).containsExactly(What.FIGURE, What.LINE, What.FIGURE);
    }

    @Test
    void lineHighAboveWhereFiguresBeginIsNoPass() {
        Log away = new Log().line(8).figure("loop", 125).line(7).figure("loop", 125);
        away.at = new Vec(away.at.x(), away.at.y(), away.at.z() + 200);
        assertThat(kinds(away.line(12))).containsExactly(What.FIGURE, What.LINE, What.FIGURE);
    }

    private List<What> kinds(Log log) {
        return figures.in(log.readings).stream()
                .map(Found::what)
                .filter(w -> w == What.FIGURE || w == What.LINE)
                .toList();
    }

    /** What is left out because it cannot be nearer is never nearer. */
    @Test
    void boundHoldsForAllFigures() {
        List<KnownShapes.Known> all = new KnownShapes(catalogue, trial).all;
        for (KnownShapes.Known one : all) {
            for (KnownShapes.Known other : all) {
                double off = one.shape().distance(other.shape());
                assertThat(one.shape().atLeast(other.shape())).isLessThanOrEqualTo(off + 1e-12);
                assertThat(one.shape().distance(other.shape(), off + 1e-9)).isEqualTo(off);
                assertThat(one.shape().distance(other.shape(), off / 2)).isGreaterThanOrEqualTo(off / 2);
            }
        }
    }

    /** Three pieces of one pass were three passes. */
    @Test
    void lineFlownALittleCrookedIsOneLine() {
        Log log = new Log().line(8).figure("loop", 125).line(5);
        for (int bend = 0; bend < 3; bend++) {
            for (double t = 0; t < 2.4; t += 0.2) {
                double turn = Math.toRadians(bend % 2 == 0 ? 1.6 : -1.6);
                log.way = new Vec(
                        log.way.x() * Math.cos(turn) - log.way.y() * Math.sin(turn),
                        log.way.y() * Math.cos(turn) + log.way.x() * Math.sin(turn),
                        0);
                log.line(0.1);
            }
            log.line(4);
        }
        List<Found> flown = figures.in(log.figure("loop", 125).line(8).readings);
        assertThat(flown).extracting(Found::what).containsExactly(What.FIGURE, What.LINE, What.FIGURE);
        assertThat(flown.get(1).seconds()).isGreaterThan(15);
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
}
