package crowdline.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.air.StandardAtmosphere;
import crowdline.flight.air.Wind;
import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Element;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LayoutTest {
    private static final String BIPLANE = "light aerobatic biplane";

    /** A wish that can be changed before it is made. */
    static final class Wanted {
        private final String name;
        private @Nullable End end;
        private @Nullable Double alongM;
        private @Nullable Boolean toRight;
        private @Nullable Double heightFt;
        private @Nullable Double kt;
        private Wish.Role role = Wish.Role.FIGURE;

        Wanted(String name) {
            this.name = name;
            role = switch (name) {
                case "take-off" -> Wish.Role.TAKE_OFF;
                case "landing" -> Wish.Role.LANDING;
                case "reposition" -> Wish.Role.TURN_BACK;
                default -> Wish.Role.FIGURE;
            };
        }

        Wanted at(End where) {
            end = where;
            return this;
        }

        Wanted alongM(double metres) {
            alongM = metres;
            return this;
        }

        Wanted toRight(boolean right) {
            toRight = right;
            return this;
        }

        Wanted heightFt(double feet) {
            heightFt = feet;
            return this;
        }

        Wanted kt(double knots) {
            kt = knots;
            return this;
        }

        Wish made(String id) {
            CatalogueEntry entry = CatalogueFile.shipped().find(name).orElseThrow();
            List<Element> elements = role == Wish.Role.FIGURE ? entry.elements() : List.of();
            return new Wish(
                    id, name, elements, false, entry.enters(), end, alongM, toRight, heightFt, kt, null, role, null);
        }
    }

    static Wanted a(String name) {
        return new Wanted(name);
    }

    static LaidOut laid(String kind, Venue.Limits limits, Wanted... wanted) {
        List<Wish> wishes = new ArrayList<>();
        for (int i = 0; i < wanted.length; i++) {
            wishes.add(wanted[i].made("figure-" + (i + 1)));
        }
        Airframe airframe = KindsFile.shipped().named(kind).airframe("a", "The aircraft", Sliders.TYPICAL);
        FigureTrial trial = new FigureTrial(airframe, Air.STANDARD);
        Area area = Area.of(limits, Units.mpsFromKt(airframe.usual().passKt()), trial.stallMps(0));
        return new Layout(trial, area).of(wishes);
    }

    static LaidOut laid(String kind, Wanted... wanted) {
        return laid(kind, Venue.Limits.NONE, wanted);
    }

    static Piece figure(LaidOut laid, int number) {
        return laid.pieces().stream()
                .filter(p -> p.wish() != null && p.wish().id().equals("figure-" + number))
                .findFirst()
                .orElseThrow();
    }

    private static double middleM(LaidOut laid, int number) {
        Piece piece = figure(laid, number);
        Airframe airframe = KindsFile.shipped().named(BIPLANE).airframe("a", "A", Sliders.TYPICAL);
        FigureTrial.Box box = new FigureTrial(airframe, Air.STANDARD)
                .fly(piece.elements(), piece.from())
                .box();
        return (box.leftM() + box.rightM()) / 2;
    }

    @Test
    void figuresAreFlownInTheOrderOfTheListAndNoneIsLost() {
        LaidOut laid = laid(
                BIPLANE,
                a("take-off"),
                a("loop"),
                a("stall turn"),
                a("slow roll"),
                a("spin"),
                a("low pass"),
                a("landing"));
        Stream<String> flown = laid.pieces().stream()
                .filter(p -> !p.isTransit())
                .map(p -> Objects.requireNonNull(p.wish()).name());
        assertThat(flown).containsExactly("take-off", "loop", "stall turn", "slow roll", "spin", "low pass", "landing");
        assertThat(laid.findings()).isEmpty();
    }

    @Test
    void everyPieceBeginsWhereTheOneBeforeItEnded() {
        LaidOut laid = laid(BIPLANE, a("loop"), a("half Cuban"), a("spin"), a("slow roll"), a("humpty bump"));
        for (int i = 1; i < laid.pieces().size(); i++) {
            assertThat(laid.pieces().get(i).from())
                    .isEqualTo(laid.pieces().get(i - 1).to());
        }
        assertThat(laid.pieces().get(0).from()).isEqualTo(laid.entry());
    }

    @Test
    void aTransitIsAPieceOfItsOwn() {
        LaidOut laid = laid(
                BIPLANE,
                a("loop").at(End.RIGHT).toRight(true),
                a("loop").at(End.LEFT).toRight(true));
        assertThat(laid.pieces().stream().filter(Piece::isTransit).map(Piece::transit))
                .contains(Transit.TURNS_BACK);
        assertThat(figure(laid, 1).elements()).hasSize(1);
    }

    @Test
    void placesOfTheListAreHonoured() {
        LaidOut laid = laid(
                BIPLANE,
                a("loop").at(End.LEFT),
                a("slow roll").at(End.CENTRE),
                a("loop").at(End.RIGHT),
                a("loop").alongM(-300));
        double half = 850;
        assertThat(middleM(laid, 1)).isBetween(-half, -0.4 * half);
        assertThat(middleM(laid, 2)).isBetween(-0.15 * half, 0.15 * half);
        assertThat(middleM(laid, 3)).isBetween(0.4 * half, half);
        assertThat(middleM(laid, 4)).isCloseTo(-300, within(60.0));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFigureBeginsTheWayTheListSays(boolean toRight) {
        LaidOut laid = laid(
                BIPLANE,
                a("loop").toRight(!toRight),
                a("slow roll").toRight(toRight),
                a("loop").toRight(toRight));
        assertThat(figure(laid, 1).from().toRight()).isEqualTo(!toRight);
        assertThat(figure(laid, 2).from().toRight()).isEqualTo(toRight);
        assertThat(figure(laid, 3).from().toRight()).isEqualTo(toRight);
    }

    @Test
    void heightAndSpeedOfTheListAreHonoured() {
        LaidOut laid =
                laid(BIPLANE, a("slow roll"), a("slow roll").heightFt(1200).kt(118));
        assertThat(Units.ftFromM(figure(laid, 2).from().place().z())).isCloseTo(1200, within(90.0));
        assertThat(Units.ktFromMps(figure(laid, 2).from().speedMps())).isCloseTo(118, within(7.0));
    }

    @Test
    void nothingComesBelowTheBaseThatWasGiven() {
        Venue.Limits limits = new Venue.Limits(700.0, null, null, null);
        LaidOut laid = laid(BIPLANE, limits, a("loop"), a("spin"), a("split S"), a("stall turn"), a("low pass"));
        Airframe airframe = KindsFile.shipped().named(BIPLANE).airframe("a", "A", Sliders.TYPICAL);
        FigureTrial trial = new FigureTrial(airframe, Air.STANDARD);
        for (Piece piece : laid.pieces()) {
            FigureTrial.Box box = trial.fly(piece.elements(), piece.from()).box();
            assertThat(Units.ftFromM(box.lowestM())).as(piece.toString()).isGreaterThan(690);
        }
    }

    @Test
    void whatThePilotToldIsNotTooLowWhereNobodyGaveABase() {
        LaidOut free =
                laid("fast jet", a("steep turn").heightFt(300), a("low pass").heightFt(100));
        assertThat(free.findings()).isEmpty();
        assertThat(Units.ftFromM(figure(free, 2).from().place().z())).isCloseTo(100, within(90.0));

        Venue.Limits limits = new Venue.Limits(500.0, null, null, null);
        assertThat(laid("fast jet", limits, a("low pass").heightFt(100)).findings())
                .extracting(LaidOut.Finding::message)
                .containsExactly(
                        "low pass is given 100 ft, and the base is 500 ft: it begins at 520 ft, the lowest it can");
    }

    @Test
    void aCeilingTooLowIsAFindingWithWhatWouldDo() {
        Venue.Limits limits = new Venue.Limits(500.0, 1000.0, null, null);
        LaidOut laid = laid(BIPLANE, limits, a("loop"));
        assertThat(laid.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.message())
                        .matches("loop tops \\d+ ft above the ceiling; it needs a ceiling \\d+ ft higher, or to"
                                + " be left out"));
    }

    @Test
    void whatTheAircraftCannotFlyIsGivenATimeAndSaysWhy() {
        LaidOut laid = laid("aerobatic glider", a("loop"), a("torque roll"), a("slow roll"));
        assertThat(figure(laid, 2).elements()).isEmpty();
        assertThat(figure(laid, 2).seconds()).isPositive();
        assertThat(laid.findings())
                .singleElement()
                .satisfies(f ->
                        assertThat(f.message()).startsWith("torque roll is not flown at displays by such an aircraft"));
        assertThat(figure(laid, 3).elements()).isNotEmpty();
    }

    @Test
    void aTurnBackOfTheListIsTheTransitThatIsFlownAnyway() {
        LaidOut laid = laid(BIPLANE, a("loop").toRight(true), a("reposition"), a("slow roll"));
        assertThat(figure(laid, 2).elements()).isNotEmpty();
        assertThat(figure(laid, 3).from().toRight()).isFalse();
    }

    /** It came round once more from the other side: what only turns back is no word against where a figure comes from. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aWayThatWasToldIsFlownThoughTheListTurnsBackBefore(boolean toRight) {
        LaidOut laid = laid(BIPLANE, a("take-off"), a("reposition"), a("loop").toRight(toRight), a("slow roll"));

        assertThat(figure(laid, 3).from().toRight()).isEqualTo(toRight);
        assertThat(figure(laid, 1).to().toRight()).isNotEqualTo(toRight);
        assertThat(laid.pieces().stream().filter(Piece::turns)).isEmpty();
    }

    @Test
    void aGliderBeginsHighEnoughToLastForItsAct() {
        LaidOut laid = laid("aerobatic glider", a("loop"), a("stall turn"), a("half Cuban"), a("slow roll"), a("loop"));
        double base = Area.of(Venue.Limits.NONE, 50, 20).baseM();
        assertThat(laid.entry().place().z())
                .isGreaterThan(figure(laid, 5).from().place().z() + 150);
        assertThat(figure(laid, 5).from().place().z()).isBetween(base - 10, base + 120);
    }

    @Test
    void theSameWishesGiveTheSameAct() {
        Wanted[] wanted = {a("take-off"), a("loop"), a("stall turn"), a("spin"), a("low pass")};
        assertThat(laid(BIPLANE, wanted)).isEqualTo(laid(BIPLANE, wanted));
    }

    @Test
    void nothingWantedIsAnActOfNothing() {
        assertThat(laid(BIPLANE).pieces()).isEmpty();
    }

    /** It took off into the wind, and looped with it behind, 150 m out of shape, rather than come round once more. */
    @ParameterizedTest
    @CsvSource({"old trainer, 90, false", "large biplane, 270, true", "aerobatic two-seater, 90, false"})
    void nobodyLoopsWithTheWindBehindToSaveATurn(String kind, double fromDeg, boolean wrong) {
        Airframe airframe = KindsFile.shipped().named(kind).airframe("a", "The aircraft", Sliders.TYPICAL);
        FigureTrial trial = new FigureTrial(airframe, new Air(new StandardAtmosphere(), Wind.steady(fromDeg, 12, 90)));
        Area area = Area.of(Venue.Limits.NONE, Units.mpsFromKt(airframe.usual().passKt()), trial.stallMps(0));
        LaidOut laid = new Layout(trial, area)
                .of(List.of(
                        a("take-off").made("figure-1"),
                        a("loop").made("figure-2"),
                        a("low pass").made("figure-3")));

        assertThat(figure(laid, 2).from().toRight()).isNotEqualTo(wrong);
        assertThat(laid.findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"90, true", "270, false"})
    void takesOffAndLandsIntoTheWind(double fromDeg, boolean toRight) {
        Airframe airframe = KindsFile.shipped().named(BIPLANE).airframe("a", "The aircraft", Sliders.TYPICAL);
        FigureTrial trial = new FigureTrial(airframe, new Air(new StandardAtmosphere(), Wind.steady(fromDeg, 10, 90)));
        Area area = Area.of(Venue.Limits.NONE, Units.mpsFromKt(airframe.usual().passKt()), trial.stallMps(0));
        LaidOut laid = new Layout(trial, area)
                .of(List.of(
                        a("take-off").made("figure-1"),
                        a("loop").made("figure-2"),
                        a("landing").made("figure-3")));

        assertThat(figure(laid, 1).to().toRight()).isEqualTo(toRight);
        assertThat(figure(laid, 3).to().toRight()).isEqualTo(toRight);
        assertThat(laid(BIPLANE, a("take-off").toRight(!toRight), a("loop"))
                        .entry()
                        .toRight())
                .isEqualTo(!toRight);
    }

    @Test
    void runsInFromWithinTheAreaThatWasGiven() {
        Wanted dive = a("dive").toRight(false);
        double free = laid("strong aerobatic monoplane", dive).entry().place().x();
        LaidOut laid = laid("strong aerobatic monoplane", new Venue.Limits(null, null, 500.0, null), dive);

        assertThat(free).isGreaterThan(510);
        assertThat(laid.entry().place().x()).isBetween(400.0, 500.0);
    }

    @Test
    void climbsOnceBeforeASpinAndGoesOnFromWhereItComesOut() {
        LaidOut laid = laid("strong aerobatic monoplane", a("loop"), a("spin"), a("loop"));

        assertThat(figure(laid, 2).from().place().z()
                        - figure(laid, 1).to().place().z())
                .isGreaterThan(200);
        assertThat(transitsBefore(laid, 2)).hasSize(1).allMatch(piece -> piece.seconds() < 40);
        assertThat(transitsBefore(laid, 3)).hasSizeLessThan(2).allMatch(piece -> piece.seconds() < 25);
        assertThat(laid.findings()).isEmpty();
    }

    private static List<Piece> transitsBefore(LaidOut laid, int number) {
        int at = laid.pieces().indexOf(figure(laid, number));
        int first = at;
        while (first > 0 && laid.pieces().get(first - 1).isTransit()) {
            first--;
        }
        return laid.pieces().subList(first, at);
    }

    @Test
    void aSpeedThatTheWayThereMissesIsSaid() {
        LaidOut laid = laid("old trainer", a("loop"), a("slow roll").kt(145));

        assertThat(laid.findings())
                .extracting(LaidOut.Finding::message)
                .singleElement()
                .asString()
                .matches("slow roll begins at 1[34]\\d kt, as near as it gets to the 145 kt it was given; give it about"
                        + " 1[34]\\d kt, or leave its speed open");
    }

    /** A loop in the middle would take a turn half a kilometre beyond the end. */
    @Test
    void aGliderTurnsBackNearTheEndOfTheAreaThatWasGiven() {
        Venue.Limits limits = new Venue.Limits(null, null, 500.0, null);
        for (LaidOut laid : List.of(
                laid("aerobatic glider", limits, a("loop"), a("slow roll"), a("loop"), a("barrel roll")),
                laid("aerobatic glider", limits, a("slow roll"), a("four-point roll"), a("loop"), a("spin")))) {
            assertThat(furthestM(laid)).isBetween(400.0, 800.0);
        }
    }

    private static double furthestM(LaidOut laid) {
        FigureTrial trial = trial("aerobatic glider");
        return laid.pieces().stream()
                .filter(piece -> !piece.elements().isEmpty())
                .map(piece -> trial.fly(piece.elements(), piece.from()).box())
                .mapToDouble(box -> Math.max(-box.leftM(), box.rightM()))
                .max()
                .orElseThrow();
    }

    static FigureTrial trial(String kind) {
        return new FigureTrial(
                KindsFile.shipped().named(kind).airframe("a", "The aircraft", Sliders.TYPICAL), Air.STANDARD);
    }

    @Test
    void aLongLineIsNotFlownToItsEnds() {
        Wanted[] list = {
            a("loop"),
            a("half Cuban").at(End.LEFT),
            a("slow roll"),
            a("stall turn").at(End.RIGHT)
        };
        LaidOut long3000 = laid(BIPLANE, new Venue.Limits(null, null, 3000.0, null), list);

        assertThat(long3000.pieces()).isEqualTo(laid(BIPLANE, list).pieces());
        assertThat(middleM(long3000, 4)).isBetween(300.0, 1_000.0);
    }
}
