package crowdline.layout;

import static crowdline.layout.LayoutTest.a;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureTrial;
import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.aircraft.Sliders;
import crowdline.storage.show.KindsFile;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Between two figures a pilot flies on where that does, and comes round only for what is not to be had ahead. */
class FlowTest {
    private static List<Piece> pieces(String kind, String... figures) {
        LayoutTest.Wanted[] wanted = new LayoutTest.Wanted[figures.length];
        for (int i = 0; i < figures.length; i++) {
            wanted[i] = a(figures[i]);
        }
        return LayoutTest.laid(kind, wanted).pieces();
    }

    private static long turns(List<Piece> pieces) {
        return pieces.stream().filter(Piece::turns).count();
    }

    @ParameterizedTest
    @CsvSource({
        "light aerobatic biplane, half roll, slow roll",
        "old trainer, barrel roll, slow roll",
        "jet trainer, steep turn, half Cuban",
        "piston fighter, barrel roll, barrel roll"
    })
    void heightAndSpeedThatAreHadAheadAreNotComeRoundFor(String kind, String first, String second) {
        assertThat(turns(pieces(kind, first, second))).isZero();
    }

    /** It comes out of the half Cuban at 350 kt and usually rolls at 270: it came round twice to slow down. */
    @Test
    void aRollIsFlownFasterThanUsualRatherThanComeRoundFor() {
        List<Piece> pieces = pieces("jet trainer", "reverse half Cuban", "aileron roll");

        assertThat(turns(pieces)).isZero();
        assertThat(pieces.get(pieces.size() - 1).from().speedMps())
                .isGreaterThan(1.1
                        * Units.mpsFromKt(KindsFile.shipped()
                                .named("jet trainer")
                                .airframe("a", "A", Sliders.TYPICAL)
                                .usual()
                                .rollKt()));
    }

    @Test
    void nothingBeginsTwoKilometresOutWhereNobodyGaveAnEnd() {
        LaidOut laid =
                LayoutTest.laid("piston fighter", a("take-off"), a("split S").toRight(true), a("low pass"));

        assertThat(laid.pieces())
                .allMatch(piece -> Math.abs(piece.from().place().x()) < 2_200);
    }

    /** A kilometre of the area is left beyond the turn back: it was flown 500 m from the middle for a few seconds less. */
    @ParameterizedTest
    @CsvSource({"piston fighter, 4000", "piston fighter, 5000", "jet trainer, 6000", "large biplane, 1600"})
    void aPassGoesPastTheMiddleWhereTheAreaHasRoomForIt(String kind, double halfM) {
        Venue.Limits limits = new Venue.Limits(300.0, null, halfM, null);
        LaidOut laid = LayoutTest.laid(
                kind,
                limits,
                a("lazy eight"),
                a("knife edge pass"),
                a("loop with a roll on top"),
                a("wing rock"),
                a("quarter clover"),
                a("low pass"));

        for (int pass : new int[] {2, 4, 6}) {
            Piece piece = LayoutTest.figure(laid, pass);
            assertThat((piece.from().place().x() + piece.to().place().x()) / 2).isBetween(-150.0, 150.0);
        }
    }

    @Test
    void aSlowPassIsComeRoundToQuicklyAndThenSlowedDownFor() {
        LaidOut laid =
                LayoutTest.laid("jet trainer", a("loop"), a("low pass").kt(120).toRight(false));

        assertThat(laid.findings()).isEmpty();
        assertThat(laid.seconds()).isLessThan(240);
    }

    @Test
    void aPassIsFlownAlongTheDisplayLineHoweverFarAwayTheFigureBeforeItEnded() {
        List<Piece> pieces = pieces("piston fighter", "wing-over", "low pass");
        Piece wingOver = pieces.stream()
                .filter(p -> p.wish() != null && p.wish().name().equals("wing-over"))
                .findFirst()
                .orElseThrow();
        Piece pass = pieces.get(pieces.size() - 1);

        assertThat(wingOver.to().place().y()).isGreaterThan(900);
        assertThat(pass.from().place().y()).isBetween(-15.0, 300.0);
    }

    @Test
    void climbsNoHigherThanItNeedsForASpeedThatTheEngineGives() {
        List<Piece> pieces = pieces("piston fighter", "take-off", "aileron roll", "loop");
        double highest = pieces.stream()
                .filter(Piece::isTransit)
                .mapToDouble(p -> p.to().place().z())
                .max()
                .orElseThrow();
        Piece roll = pieces.stream()
                .filter(p -> p.wish() != null && p.wish().name().equals("aileron roll"))
                .findFirst()
                .orElseThrow();

        assertThat(highest - roll.from().place().z()).isLessThan(200);
    }

    @Test
    void anActWhoseFirstPieceIsOnlyTimedBeginsAsHighAsItsFirstFigure() {
        Wish timed = new Wish(
                "run-in", "run-in", List.of(), false, null, null, null, null, null, null, 15.0, Wish.Role.FIGURE, null);
        Wish dive = a("dive").kt(280).made("figure-1");
        RandomLists.Case any = new RandomLists(1)
                .next(RandomLists.kinds().stream()
                        .filter(k -> k.name().equals("piston fighter"))
                        .findFirst()
                        .orElseThrow());
        LaidOut laid = new Layout(any.trial(), any.area()).of(List.of(timed, dive));
        Piece begun = laid.pieces().get(laid.pieces().size() - 1);

        assertThat(Objects.requireNonNull(begun.wish()).name()).isEqualTo("dive");
        assertThat(laid.entry().place().z())
                .isCloseTo(begun.from().place().z(), org.assertj.core.data.Offset.offset(Units.mFromFt(100)));
        assertThat(turns(laid.pieces())).isZero();
    }

    /** From its usual speed it takes more than the airframe is flown with at the bottom. */
    @Test
    void whatIsTooHardAtItsUsualSpeedIsBegunMoreSlowly() {
        LaidOut laid = LayoutTest.laid("piston fighter", a("loop"), a("shark's tooth"));
        double usualKt = KindsFile.shipped()
                .named("piston fighter")
                .airframe("a", "A", Sliders.TYPICAL)
                .usual()
                .loopKt();

        assertThat(laid.pieces()).allMatch(piece -> piece.lack() == null);
        assertThat(Units.ktFromMps(figure(laid, "shark's tooth").from().speedMps()))
                .isLessThan(0.97 * usualKt);
    }

    @Test
    void aGliderTurnsMoreSteeplyWhereItsTurnWouldLeadOutOfAShortLine() {
        LaidOut laid = LayoutTest.laid(
                "aerobatic glider",
                new Venue.Limits(null, null, 500.0, null),
                a("loop").toRight(true),
                a("loop").toRight(false),
                a("low pass").toRight(true),
                a("low pass").toRight(false));
        FigureTrial trial = LayoutTest.trial("aerobatic glider");

        for (Piece piece : laid.pieces()) {
            FigureTrial.Box box = trial.fly(piece.elements(), piece.from()).box();
            assertThat(Math.max(-box.leftM(), box.rightM())).isLessThan(650);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aSpinIsAtTheEndItIsWantedAtWhicheverWayItIsFlown(boolean toRight) {
        List<Piece> pieces = LayoutTest.laid(
                        "aerobatic two-seater", a("spin").at(End.RIGHT).toRight(toRight))
                .pieces();
        Piece spin = pieces.get(pieces.size() - 1);

        double begunM = spin.from().place().x();
        double endedM = spin.to().place().x();
        assertThat(begunM + 0.6 * (endedM - begunM)).isGreaterThan(500);
    }

    @Test
    void aHeightToldBelowTheBaseIsSaidAsOne() {
        LaidOut laid = LayoutTest.laid(
                "aerobatic two-seater",
                new Venue.Limits(300.0, null, null, null),
                a("low pass").heightFt(100));

        assertThat(laid.findings())
                .extracting(LaidOut.Finding::message)
                .containsExactly(
                        "low pass is given 100 ft, and the base is 300 ft: it begins at 320 ft, the lowest it can");
    }

    @Test
    void aHeightThatLeadsBelowTheGroundIsRaisedThoughNobodyGaveABase() {
        LaidOut laid = LayoutTest.laid("fast jet", a("split S").heightFt(1500));

        assertThat(laid.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.message())
                        .matches("split S is given 1,500 ft, and comes below the ground from there: it begins"
                                + " at [\\d,]+ ft"));
        assertThat(laid.pieces()).allMatch(piece -> piece.lowestM() >= 0);
    }

    /** Its whole roll straight down takes more height than it wins on its way up, at any speed it may have. */
    @Test
    void whatComesOutLowerThanItBeganBeginsHigherAndSaysSoOfALongClimb() {
        Venue.Limits limits = new Venue.Limits(600.0, null, null, null);
        LaidOut laid = LayoutTest.laid("aerobatic two-seater", limits, a("low pass"), a("vertical roll down"));

        assertThat(laid.findings()).isEmpty();
        assertThat(laid.pieces().get(laid.pieces().size() - 1).lowestM()).isGreaterThan(Units.mFromFt(600.0) - 0.5);
        assertThat(LayoutTest.laid("aerobatic two-seater", limits, a("take-off"), a("vertical roll down"))
                        .findings())
                .extracting(LaidOut.Finding::message)
                .containsExactly("vertical roll down comes out 480 ft lower than it began, and more speed at its start"
                        + " would not help; it begins that much higher");
    }

    private static Piece figure(LaidOut laid, String name) {
        return laid.pieces().stream()
                .filter(p -> p.wish() != null && p.wish().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** A dive is measured from its usual speed, and begun more slowly it takes less: it begins no higher than it need. */
    @ParameterizedTest
    @CsvSource({"fast jet, dive, 1500", "fast jet, split S, 5000", "old trainer, dive, 100"})
    void whatIsToldTooLowIsRaisedNoFurtherThanItNeeds(String kind, String figure, double toldFt) {
        LaidOut laid = LayoutTest.laid(kind, a("low pass"), a(figure).heightFt(toldFt), a("loop"));
        Piece raised = figure(laid, figure);
        double takes = raised.from().place().z() - raised.lowestM();

        assertThat(raised.from().place().z()).isGreaterThan(Units.mFromFt(toldFt));
        assertThat(raised.lowestM()).isBetween(0.0, 0.05 * takes + Ground.MARGIN_M + 1);
    }

    @Test
    void aPassIsLowHoweverHighTheFigureAfterItBegins() {
        LaidOut laid = LayoutTest.laid("jet trainer", a("low pass"), a("split S"));
        Piece pass = figure(laid, "low pass");

        assertThat(figure(laid, "split S").from().place().z())
                .isGreaterThan(2 * pass.from().place().z());
        assertThat(pass.from().place().z()).isCloseTo(figure(laid, "split S").lowestM(), within(30.0));
    }

    /** It comes round low and fast and pulls up to where it is to be slow; at one height that took a minute and a half. */
    @Test
    void speedThatIsTooMuchIsClimbedWith() {
        LaidOut laid = LayoutTest.laid("jet trainer", a("low pass"), a("split S"));
        double between = laid.pieces().stream()
                .filter(Piece::isTransit)
                .mapToDouble(Piece::seconds)
                .sum();

        assertThat(between).isLessThan(100);
        assertThat(laid.pieces().get(laid.pieces().size() - 2).transit()).isEqualTo(Transit.CLIMBS);
    }

    /** At twenty degrees it had no room for that ahead, and came round for a minute, and again after it. */
    @Test
    void whatIsHighAndSlowIsPulledUpToAhead() {
        List<Piece> pieces = pieces("piston fighter", "low pass", "split S", "low pass");

        assertThat(turns(pieces)).isZero();
        assertThat(pieces.stream().filter(Piece::isTransit).mapToDouble(Piece::seconds))
                .allMatch(seconds -> seconds < 25);
    }

    /** It slowed down for the turn, as it is to be slow after it: that took 67 s, and the pull up 16. */
    @Test
    void whatIsPulledUpToIsComeRoundForFast() {
        double between = pieces("fast jet", "low pass", "split S").stream()
                .filter(piece -> piece.isTransit() && piece.transit() != Transit.RUNS_IN)
                .mapToDouble(Piece::seconds)
                .sum();

        assertThat(between).isLessThan(73);
    }

    /** It was told to slow down for half a minute, while it came back from a kilometre out. */
    @Test
    void theWayBackToTheLineIsCalledThat() {
        LaidOut laid = LayoutTest.laid("piston fighter", a("low pass"), a("wing-over"), a("barrel roll"));

        assertThat(laid.pieces().stream().map(Piece::transit))
                .contains(Transit.COMES_IN)
                .doesNotContain(Transit.SLOWS_DOWN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"light aerobatic biplane", "strong aerobatic monoplane", "old trainer"})
    void nobodyDivesForTheSpeedOfADive(String kind) {
        LaidOut laid = LayoutTest.laid(kind, a("take-off"), a("dive"), a("loop"));

        assertThat(laid.findings()).isEmpty();
        assertThat(laid.pieces().stream().map(Piece::transit))
                .containsSubsequence(null, Transit.TURNS_BACK, null, null)
                .doesNotContain(Transit.DIVES, Transit.SLOWS_DOWN);
    }
}
