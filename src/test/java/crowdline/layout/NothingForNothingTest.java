package crowdline.layout;

import static crowdline.layout.LayoutTest.a;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.air.StandardAtmosphere;
import crowdline.flight.air.Wind;
import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Sliders;
import crowdline.storage.show.KindsFile;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody climbs, comes round or goes far out for what is not flown, or not needed. */
class NothingForNothingTest {
    private static FigureTrial trial(String kind, double fromDeg, double kt) {
        Airframe airframe = KindsFile.shipped().named(kind).airframe("a", "The aircraft", Sliders.TYPICAL);
        return new FigureTrial(airframe, new Air(new StandardAtmosphere(), Wind.steady(fromDeg, kt, 90)));
    }

    private static LaidOut laid(FigureTrial trial, Venue.Limits limits, LayoutTest.Wanted... wanted) {
        Area area = Area.of(limits, Units.mpsFromKt(trial.airframe().usual().passKt()), trial.stallMps(0));
        return new Layout(trial, area)
                .of(IntStream.range(0, wanted.length)
                        .mapToObj(i -> wanted[i].made("figure-" + i))
                        .toList());
    }

    private static Piece figure(LaidOut laid, String name) {
        return laid.pieces().stream()
                .filter(piece -> !piece.isTransit()
                        && Objects.requireNonNull(piece.wish()).name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Into the wind it takes 1,500 ft and with it 600; it was begun as high either way, and came out 900 ft too high. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void whatTakesLessHeightOneWayBeginsSoMuchLower(boolean toRight) {
        LaidOut laid = laid(
                trial("aerobatic two-seater", 46, 21),
                new Venue.Limits(500.0, null, null, null),
                a("low pass"),
                a("split S").toRight(toRight));

        assertThat(Units.ftFromM(figure(laid, "split S").lowestM())).isBetween(490.0, 620.0);
    }

    /** It begins faster than its engine holds: it came round twice, and dived, before its first figure. */
    @Test
    void anActRunsInToItsFirstFigure() {
        LaidOut laid = laid(trial("large biplane", 0, 0), Venue.Limits.NONE, a("loop"), a("low pass"));

        assertThat(laid.pieces().get(0).transit()).isEqualTo(Transit.RUNS_IN);
        assertThat(laid.pieces().get(1)).isEqualTo(figure(laid, "loop"));
        assertThat(laid.findings()).isEmpty();
    }

    /** It slowed down to 60 kt a kilometre out, and turned round at that. */
    @Test
    void nobodyTurnsRoundAsSlowlyAsASpinBegins() {
        LaidOut laid = laid(
                trial("large biplane", 147, 13),
                new Venue.Limits(null, null, 1400.0, null),
                a("Derry turn").toRight(false),
                a("flat spin").toRight(true));
        List<Piece> in = laid.pieces().stream()
                .filter(piece -> piece.transit() == Transit.COMES_IN)
                .toList();

        assertThat(in).isNotEmpty().allMatch(piece -> piece.to().speedMps() > Units.mpsFromKt(70));
    }

    /** Half the way round it is pushed, and the wind asked for more than the airframe takes. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 60, 120, 180, 240, 300})
    void aRollingTurnIsFlownInTheWind(double fromDeg) {
        LaidOut laid = laid(trial("jet trainer", fromDeg, 20), Venue.Limits.NONE, a("low pass"), a("rolling turn"));

        assertThat(laid.findings()).isEmpty();
    }

    /** It turned back before the wing-over and once more after it, as it was back on the line 70 m too late for the middle. */
    @ParameterizedTest
    @CsvSource({
        "strong aerobatic monoplane, 0",
        "light aerobatic biplane, 0",
        "light aerobatic biplane, 12",
        "large biplane, 0",
        "piston fighter, 0",
        "piston fighter, 12",
        "jet trainer, 0",
        "fast jet, 0",
        "aerobatic glider, 0"
    })
    void aFigureThatTurnsRoundIsTheTurnBackBetweenPasses(String kind, double windKt) {
        FigureTrial trial = trial(kind, 60, windKt);
        LaidOut laid = laid(
                trial,
                Venue.Limits.NONE,
                a("low pass").toRight(false),
                a("wing-over"),
                a("low pass").toRight(true));
        Piece pass = laid.pieces().get(laid.pieces().size() - 1);

        assertThat(laid.pieces()).noneMatch(Piece::turns);
        double middleM = (pass.from().place().x() + pass.to().place().x()) / 2;
        assertThat(Math.abs(middleM)).isLessThan(3.5 * pass.from().speedMps());
    }

    /** At an end of the line that was told, it turned back for 400 ft or 30 kt that a little further out would have given. */
    @Test
    void anEndThatIsToldMayBeALittleFurtherOut() {
        LaidOut laid = laid(
                trial("piston fighter", 0, 0),
                Venue.Limits.NONE,
                a("low pass").toRight(true).heightFt(100).kt(280),
                a("half Cuban").at(End.RIGHT).heightFt(500).kt(260),
                a("loop").at(End.CENTRE).heightFt(500).kt(270),
                a("Derry turn").at(End.LEFT).heightFt(300).kt(230));

        assertThat(laid.pieces()).noneMatch(Piece::turns);
        assertThat(figure(laid, "half Cuban").from().place().x()).isPositive();
        assertThat(figure(laid, "Derry turn").from().place().x()).isNegative();
        assertThat(laid.findings()).isEmpty();
    }

    /** 20 kt that a wing-over had lost were come round for, half a minute long. */
    @Test
    void aPassAsNearTheSpeedItIsToldAsItCanBeIsNotComeRoundFor() {
        LaidOut laid = laid(
                trial("piston fighter", 0, 0),
                Venue.Limits.NONE,
                a("low pass").toRight(false).heightFt(100).kt(300),
                a("wing-over").at(End.LEFT).heightFt(100),
                a("low pass").toRight(true).heightFt(100).kt(280));

        assertThat(laid.pieces()).noneMatch(Piece::turns);
        assertThat(laid.findings()).isEmpty();
    }
}
