package crowdline.arrange;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.FlightFinding;
import crowdline.flight.Predictor;
import crowdline.list.ListReader;
import crowdline.list.line.FigureList;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Severity;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.assertj.core.api.Assertions;
import org.assertj.core.groups.Tuple;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ShowArrangingTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final String MAIL = """
        take-off, dive in from the left, loop, stall turn right end, slow roll, half Cuban, four point roll, \
        humpty bump, spin 2 turns, low pass
        """;

    private static ShowArranging.Made made(Show show, String kindName, String text) {
        Kind kind = KindsFile.shipped().named(kindName);
        FigureList list = new ListReader(CATALOGUE).read(text);
        ShowArranging.Making making = id -> kind.flies()
                ? kind.airframe(id, "The aircraft", Sliders.TYPICAL)
                : new TimedAircraft(id, "The aircraft", kind, null);
        return new ShowArranging(CATALOGUE)
                .add(show, list, making, new ShowArranging.About("An act", "Somebody", LocalTime.of(14, 0), null));
    }

    /**
     * Usually 25, 15 and 60 s, together 100; 6 min less the 60 s told are 300 s, three times that. In a minute they would last no
     * time, and take their usual one.
     */
    @ParameterizedTest
    @CsvSource({"6, 75, 45, 180", "1, 25, 15, 60", "1.1, 5, 5, 5", "30, 300, 261, 300"})
    void timedFiguresShareWhatIsLeftOfTheTimeTold(double minutes, double liftOffS, double turnS, double landingS) {
        FigureList list = new ListReader(CATALOGUE).read("lift off, quick stop (60 s), pedal turn, landing");
        Kind kind = KindsFile.shipped().named("helicopter");
        ShowArranging.Made made = new ShowArranging(CATALOGUE)
                .add(
                        empty(),
                        list,
                        id -> new TimedAircraft(id, "The aircraft", kind, null),
                        new ShowArranging.About("An act", null, LocalTime.of(14, 0), minutes));
        assertThat(made.arranged().times()).containsExactly(liftOffS, 60.0, turnS, landingS);
        assertThat(made.act().slotMinutes()).isEqualTo(minutes);
    }

    private static Show empty() {
        return ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);
    }

    private static Figure figure(ShowArranging.Made made, String name) {
        return made.act().figures().stream()
                .filter(f -> f.figure().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double rolledDeg(Figure figure) {
        return Objects.requireNonNull(figure.elements()).stream()
                .filter(Element.Roll.class::isInstance)
                .mapToDouble(e -> ((Element.Roll) e).degrees())
                .sum();
    }

    /** The whole figure was flown again from the top of the first, where nothing has the speed for it. */
    @ParameterizedTest
    @CsvSource({
        "1 1/2 vertical rolls up, vertical roll up, 540",
        "2 vertical rolls up, vertical roll up, 720",
        "2 aileron rolls, aileron roll, 720"
    })
    void severalRollsAreRolledOnOneLine(String text, String name, double degrees) {
        ShowArranging.Made made = made(empty(), "strong aerobatic monoplane", "low pass, " + text);

        assertThat(made.arranged().findings()).isEmpty();
        assertThat(rolledDeg(figure(made, name))).isEqualTo(degrees);
    }

    /** Taken apart it came down from the vertical, turned back for a minute and rolled level. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pull to vertical, 1/2 roll, push out, loop | vertical roll up, loop | 180",
                "pull to vertical, half roll, loop | vertical roll up, loop | 180",
                "pull to vertical, roll, push out, loop | vertical roll up, loop | 360",
                "pull to vertical, push out, loop | pull to vertical, loop | 0",
                "vertical roll up, push out, loop | vertical roll up, loop | 360",
                "low pass, half roll, push out, loop | low pass, half roll, push-over, loop | 0"
            })
    void whatIsFlownOnAVerticalLineIsOneFigureWithIt(String text, String figures, double degrees) {
        ShowArranging.Made made = made(empty(), "strong aerobatic monoplane", text);
        List<Figure> flown =
                made.act().figures().stream().filter(f -> !f.transit()).toList();

        assertThat(flown.stream().map(Figure::figure)).containsExactly(figures.split(", "));
        assertThat(rolledDeg(flown.get(0))).isEqualTo(degrees);
        assertThat(made.arranged().findings()).isEmpty();
    }

    /** A half roll beside what begins or ends with one is that one: rolled twice it came out upside down, and was rolled back in 0 s. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "low pass, inverted pass, roll to upright, loop | 180, 180",
                "low pass, half roll to inverted, inverted pass, half roll to upright, loop | 180, 0, 180",
                "low pass, half roll, half roll, loop | 180, 180",
                "low pass, half roll, outside loop, half roll, loop | 180, 0, 180",
                "low pass, inverted pass, half roll, half roll, loop | 180, 180, 180",
                "low pass, half roll, split S | 180, 180"
            })
    void aHalfRollBesideAFigureThatHasItIsFlownOnce(String text, String degrees) {
        ShowArranging.Made made = made(empty(), "strong aerobatic monoplane", text);
        List<Figure> figures = made.act().figures();

        assertThat(figures.stream()
                        .filter(f -> !f.transit()
                                && List.of("half roll", "inverted pass", "outside loop", "split S")
                                        .contains(f.figure()))
                        .map(f -> String.format("%.0f", rolledDeg(f))))
                .isEqualTo(List.of(degrees.split(", ")));
        assertThat(made.arranged().times()).allMatch(seconds -> seconds >= 1);
        Flight flight = new Predictor(
                        made.show(),
                        CATALOGUE,
                        made.act(),
                        made.act().variants().get(0))
                .predict();
        FigureFlight last = flight.figures().get(flight.figures().size() - 1);
        assertThat(flight.findings()).isEmpty();
        assertThat(flight.samples().stream()
                        .filter(s -> s.tS() >= last.startS())
                        .findFirst())
                .hasValueSatisfying(s -> assertThat(s.up().z()).isPositive());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Fan break | fan break",
                "flag jump | flag jump",
                "Diamond loop | diamond loop",
                "Backwards climb | backwards climb",
                "final loop |",
                "loop |",
                "slow pass gear down |"
            })
    void aWordThatDescribesAFigureStaysWithIt(String text, @Nullable String title) {
        assertThat(made(empty(), "formation", text + "\nlanding")
                        .act()
                        .figures()
                        .get(0)
                        .title())
                .isEqualTo(title);
    }

    @Test
    void whatRollsUprightOnlyOnTheWayIsSeenToDoSo() {
        ShowArranging.Made made = made(empty(), "strong aerobatic monoplane", "low pass, half roll, loop");

        for (int i = 0; i < made.act().figures().size(); i++) {
            if (made.act().figures().get(i).shownName().equals("rolling upright")) {
                assertThat(made.arranged().times().get(i)).isBetween(1.0, 3.0);
                return;
            }
        }
        throw new AssertionError("nothing rolls upright");
    }

    @Test
    void whatIsToldTwiceInARowAndIsOneIsFlownOnce() {
        ShowArranging.Made made =
                made(empty(), "jet trainer", "loop\nfarewell pass wing rock\nbreak to land\nlanding (70 s)");

        assertThat(made.act().figures().stream().filter(f -> !f.transit()).map(Figure::figure))
                .containsExactly("loop", "wing rock", "break", "landing");
        assertThat(figure(made, "landing").durationS()).isEqualTo(70);
        assertThat(Objects.requireNonNull(figure(made, "landing").asked()).text())
                .contains("to land")
                .contains("landing (70 s)");
    }

    /** Each roll hangs for four seconds, with the right way up between; both together counted as eight. */
    @Test
    void whatAnOldTrainerShowsOnceItShowsTwiceInARow() {
        ShowArranging.Made made = made(empty(), "old trainer", "low pass\n2 slow rolls");

        assertThat(made.arranged().findings()).isEmpty();
        assertThat(rolledDeg(figure(made, "slow roll"))).isEqualTo(720);
    }

    @Test
    void parachutistsLandUnderTheirCanopies() {
        assertThat(made(empty(), "parachutists", "freefall, canopies open, landing")
                        .act()
                        .figures())
                .extracting(Figure::figure)
                .containsExactly("freefall", "canopy descent", "canopy landing");
        assertThat(made(empty(), "helicopter", "hover, landing").act().figures())
                .extracting(Figure::figure)
                .containsExactly("hover", "landing");
    }

    @Test
    void severalLoopsWithARollAreSeveralLoops() {
        ShowArranging.Made made = made(
                empty(), "strong aerobatic monoplane", "2 loops with a roll on top, half loop with roll out on top");
        List<Element> elements =
                Objects.requireNonNull(figure(made, "loop with a roll on top").elements());

        assertThat(elements.stream().filter(Element.Roll.class::isInstance)).hasSize(2);
        assertThat(elements.stream().filter(Element.Arc.class::isInstance)).hasSizeGreaterThanOrEqualTo(4);
    }

    @Test
    void whatComesBackFromAcrossTheLineIsNotSaidToGoRoundBehind() {
        ShowArranging.Made made = made(empty(), "jet trainer", "quarter clover, low pass from the left");
        Figure back = made.act().figures().stream()
                .filter(f -> f.transit() && f.shownName().contains("turning back"))
                .findFirst()
                .orElseThrow();

        assertThat(back.look()).isEqualTo("It turns round out there, and comes back along the line from the left.");
    }

    static List<String> flying() {
        return KindsFile.shipped().all().stream()
                .filter(Kind::flies)
                .map(Kind::name)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("flying")
    void theListOfAnEmailIsAnActThatFliesOnEveryKind(String kind) {
        ShowArranging.Made made = made(empty(), kind, MAIL);
        assertThat(ShowRules.check(made.show(), CATALOGUE).stream()
                        .filter(f -> f.severity() == Severity.ERROR)
                        .filter(f -> !f.code().equals("no-incident-page")))
                .isEmpty();
        Act act = made.act();
        Flight flight =
                new Predictor(made.show(), CATALOGUE, act, act.variants().get(0)).predict();
        assertThat(flight.figures()).allSatisfy(f -> assertThat(f.completed()).isTrue());
        assertThat(flight.findings()).as(kind).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("flying")
    void thePredictionTakesAsLongAsTheLayoutSaid(String kind) {
        ShowArranging.Made made = made(empty(), kind, MAIL);
        Act act = made.act();
        Flight flight =
                new Predictor(made.show(), CATALOGUE, act, act.variants().get(0)).predict();
        assertThat(flight.totalS()).isCloseTo(made.arranged().seconds(), Assertions.within(2.0));
    }

    private static List<FlightFinding> found(Venue.Limits limits, String kind, String text) {
        Show bare = empty();
        Venue venue = new Venue("Here", 52.0, 1.0, 100.0, 90.0, 150.0, ZoneOffset.UTC, limits);
        Show show = new Show(bare.title(), bare.date(), venue, bare.air(), List.of(), List.of(), List.of(), List.of());
        ShowArranging.Made made = made(show, kind, text);
        Act act = made.act();
        return new Predictor(made.show(), CATALOGUE, act, act.variants().get(0))
                .predict()
                .findings();
    }

    @Test
    void climbingOutAfterTheTakeOffIsNoFigureBelowTheBase() {
        Venue.Limits limits = new Venue.Limits(500.0, 4000.0, 1500.0, 1200.0);
        assertThat(found(limits, "light aerobatic biplane", MAIL)).isEmpty();
    }

    @Test
    void aGliderThatTurnsBackIsNeverTooLow() {
        assertThat(found(Venue.Limits.NONE, "aerobatic glider", "loop, inverted pass, turn back, low pass"))
                .isEmpty();
    }

    @Test
    void everyLineOfTheListIsOneFigureThatKnowsWhatWasAsked() {
        Act act = made(empty(), "light aerobatic biplane", MAIL).act();
        List<Figure> asked = act.figures().stream().filter(f -> !f.transit()).toList();
        assertThat(asked).hasSize(10);
        Figure stallTurn = asked.get(3);
        assertThat(stallTurn.asked()).extracting(Asked::place).isEqualTo(Asked.Place.RIGHT_END);
        assertThat(asked.get(8).elements())
                .filteredOn(Element.Spin.class::isInstance)
                .extracting(e -> ((Element.Spin) e).turns())
                .containsExactly(2.0);
    }

    @Test
    void whatIsBetweenFiguresIsATransitWithANameAndASentence() {
        Act act = made(empty(), "light aerobatic biplane", MAIL).act();
        assertThat(act.figures().stream().filter(Figure::transit)).isNotEmpty().allSatisfy(f -> {
            assertThat(f.title()).isNotBlank();
            assertThat(f.look()).endsWith(".");
            assertThat(f.asked()).isNull();
        });
        assertThat(act.figures().stream().map(Figure::id)).doesNotHaveDuplicates();
    }

    @Test
    void aFormationIsTimesAndNothingElse() {
        ShowArranging.Made made = made(empty(), "formation", "join-up\nloop (30 s)\nbreak (0:20)\nlanding");
        assertThat(made.act().entry()).isNull();
        assertThat(made.act().figures())
                .allSatisfy(f -> assertThat(f.elements()).isNull());
        assertThat(made.act().figures().get(1).durationS()).isEqualTo(30);
        assertThat(made.act().figures().get(2).durationS()).isEqualTo(20);
    }

    @Test
    void whatIsNoFigureIsFlownForItsTimeUnderItsOwnWords() {
        Act act = made(empty(), "light aerobatic biplane", "loop\nsmoke heart (12 s)\nslow roll")
                .act();
        Figure wave = act.figures().stream()
                .filter(f -> f.asked() != null && f.asked().text().contains("heart"))
                .findFirst()
                .orElseThrow();
        assertThat(wave.shownName()).containsIgnoringCase("heart");
        assertThat(wave.durationS()).isEqualTo(12);
    }

    @Test
    void aSecondActLeavesTheFirstAsItWas() {
        ShowArranging.Made first = made(empty(), "light aerobatic biplane", MAIL);
        ShowArranging.Made second = made(first.show(), "jet trainer", "loop, slow roll");
        assertThat(second.show().acts()).hasSize(2);
        assertThat(second.show().acts().get(0)).isEqualTo(first.act());
        assertThat(second.show().acts().stream().map(Act::id)).doesNotHaveDuplicates();
        assertThat(second.show().airframes().stream().map(Aircraft::id)).doesNotHaveDuplicates();
        assertThat(second.show().performers()).hasSize(1);
    }

    @Test
    void countsAndSidesReachTheElements() {
        Act act = made(empty(), "strong aerobatic monoplane", "3 rolls, spin to the left 1 1/2 turns, 2 loops")
                .act();
        List<Figure> asked = act.figures().stream().filter(f -> !f.transit()).toList();
        assertThat(asked.get(0).elements())
                .filteredOn(Element.Roll.class::isInstance)
                .extracting(e -> ((Element.Roll) e).degrees())
                .containsExactly(1080.0);
        assertThat(asked.get(1).elements())
                .filteredOn(Element.Spin.class::isInstance)
                .extracting(e -> ((Element.Spin) e).turns(), e -> ((Element.Spin) e).toward())
                .containsExactly(Tuple.tuple(1.5, Element.Side.LEFT));
        assertThat(asked.get(2).elements())
                .filteredOn(e -> e instanceof Element.Arc)
                .hasSize(2);
    }

    @ParameterizedTest
    @MethodSource("flying")
    void aPassOfHalfAMinuteIsHardlyFasterAtItsEnd(String kind) {
        Act act = made(empty(), kind, "low pass (30 s)").act();
        Show show = made(empty(), kind, "low pass (30 s)").show();
        FigureFlight pass = new Predictor(show, CATALOGUE, act, act.variants().get(0))
                .predict().figures().stream()
                        .filter(f -> f.name().equals("low pass"))
                        .findFirst()
                        .orElseThrow();

        assertThat(pass.greatestMps()).isLessThan(1.15 * pass.entryMps());
    }
}
