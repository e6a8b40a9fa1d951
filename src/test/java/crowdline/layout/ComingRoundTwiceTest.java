package crowdline.layout;

import static crowdline.layout.LayoutTest.a;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.figure.Element;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nobody comes round twice to fly on the way he is flying, for what a pilot would have or do without. */
class ComingRoundTwiceTest {
    private static List<Piece> way(String kind, String first, LayoutTest.Wanted second) {
        return LayoutTest.laid(kind, a(first).toRight(true), second).pieces();
    }

    /** Each comes out some knots faster than the next is begun at most, and was to slow down as far as its usual speed. */
    @ParameterizedTest
    @CsvSource({"jet trainer, loop", "jet trainer, slow roll", "fast jet, steep turn", "fast jet, Cuban eight"})
    void whatIsATrifleTooFastIsNotComeRoundFor(String kind, String second) {
        assertThat(way(kind, "Cuban eight", a(second).toRight(true))).noneMatch(Piece::turns);
    }

    /** They climb to dive for it, from a speed that the engine gives in good time. */
    @ParameterizedTest
    @CsvSource({
        "old trainer, wing rock, shark's tooth",
        "old trainer, goldfish, loop",
        "large biplane, low pass, Cuban eight"
    })
    void aSpeedThatIsDivedForHasRoomAhead(String kind, String first, String second) {
        assertThat(way(kind, first, a(second).toRight(true))).noneMatch(Piece::turns);
    }

    @ParameterizedTest
    @CsvSource({
        "aerobatic two-seater, barrel roll, loop",
        "jet trainer, steep turn, barrel roll",
        "jet trainer, wing rock, reverse half Cuban"
    })
    void anEndThatIsFlownToMayBeFurtherOut(String kind, String first, String second) {
        assertThat(way(kind, first, a(second).at(End.RIGHT))).noneMatch(Piece::turns);
    }

    /** Begun at 300 kt it was given more speed, and turned back for that. */
    @Test
    void whatDoesNotComeOffFasterThanUsualIsBegunMoreSlowly() {
        assertThat(way("piston fighter", "Cuban eight", a("humpty bump").at(End.RIGHT)))
                .noneMatch(Piece::turns);
    }

    /** What is taken for a speed that was told is not spoken of: 9 kt of 195 were "as near as it gets", and 4 were not. */
    @Test
    void aTwentiethOfAToldSpeedIsNothingToAskAbout() {
        LaidOut laid = LayoutTest.laid(
                "piston fighter",
                a("loop").toRight(true),
                a("aileron roll").kt(195).toRight(true));
        double kt = Units.ktFromMps(
                laid.pieces().get(laid.pieces().size() - 1).from().speedMps());

        assertThat(kt).isBetween(203.0, 205.0);
        assertThat(laid.findings()).isEmpty();
    }

    private static Joining joining(FigureTrial trial) {
        return new Joining(trial, 150, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private static Entry loop(double alongM) {
        double leastMps = Units.mpsFromKt(126);
        return new Entry(alongM, 0, 160, Units.mpsFromKt(130), leastMps, Units.mpsFromKt(143), true);
    }

    private static FlightState flying(double kt, double heightM) {
        return FlightState.along(new Vec(0, 0, heightM), Units.mpsFromKt(kt), true);
    }

    /** It flew for 80 s to have 126 kt in place of 125. */
    @Test
    void aKnotIsNotComeRoundFor() {
        Joining joining = joining(LayoutTest.trial("old trainer"));

        assertThat(joining.from(flying(125, 165), loop(10), false)).isEmpty();
        assertThat(joining.estimating.estimate(flying(125, 165), loop(0)).reachM())
                .isZero();
        assertThat(joining.from(flying(123, 165), loop(10), false))
                .filteredOn(Piece::turns)
                .hasSize(2);
        assertThat(joining.estimating.estimate(flying(123, 165), loop(0)).reachM())
                .isNotZero();
    }

    /** Height that is missing is: what is too low comes below the base. */
    @Test
    void heightThatIsMissingIsStillWonFirst() {
        Joining joining = joining(LayoutTest.trial("old trainer"));

        assertThat(joining.from(flying(128, 160 - Fit.LEVEL_M - 2), loop(10), false))
                .isNotEmpty();
    }

    /** Straight on where that was hoped for comes to less than the speed it takes. */
    @Test
    void anotherWayIsFlownHoweverMuchWasFlownBefore() {
        FigureTrial trial = LayoutTest.trial("old trainer");
        double rollMps = Units.mpsFromKt(trial.usual().rollKt());
        Area area = Area.of(Venue.Limits.NONE, Units.mpsFromKt(trial.usual().passKt()), trial.stallMps(0));
        Ground ground = new Ground(trial, area);
        ground.work.isFor(1);
        Wish loop = a("loop").made("figure-1");
        FlightState at = FlightState.along(new Vec(-1_500, 0, area.baseM() + 20), rollMps, true);
        ground.measured(loop, true);
        ground.measured(loop, false);
        while (ground.work.isLeft(Work.Part.FLYING)) {
            trial.fly(List.of(new Element.Line(Element.Until.SECONDS, 5, List.of(), 1)), at);
        }
        Weighing.Best best =
                Objects.requireNonNull(new Weighing(ground, new Choosing(ground)).best(List.of(loop), at, false, 0));

        assertThat(Estimating.isTwice(best.tried().way())).isFalse();
    }
}
