package crowdline.flight.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.BarrelCurve;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.LoopShape;
import crowdline.show.figure.Element.Arc;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Way;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Widths against mechanics: on a round path of radius r the load felt at the bottom is 1 + v² / (g r), at the top
 * v² / (g r) − 1; a height h that is lost adds 2 g h to v², of which nine tenths are kept.
 */
class BendsTest {
    private static final double G = 9.80665;
    private static final double V = 60;
    private static final double V2 = V * V;
    /** Widths are drawn to a tenth of a metre. */
    private static final Offset<Double> DRAWN = within(0.0501);

    private static Bends bends(Forces forces, double pullG, double pushG) {
        return new Bends(forces, new Attempt(pullG, pushG, 1, false, 1.3, new Attempt.Throttle(1, 0.5)));
    }

    private static Bends free(double pullG) {
        return bends(Rig.dragFree(), pullG, -pullG);
    }

    /** On a wing that gives so much and no more. */
    private static Bends winged(double pullG) {
        return bends(Rig.seaLevel(Rig.monoplane()), pullG, -pullG);
    }

    /** 85 % of the lift of the invented monoplane, g: ½ ρ v² S c / (m g). */
    private static double wingG(double mps, double mostLift) {
        return 0.85 * 0.5 * 1.225 * mps * mps * 10.44 * mostLift / (869.6 * G);
    }

    private static Arc arc(Way way, double degrees, Size size) {
        return new Arc(way, degrees, null, size, 0, 1, 1);
    }

    private static Arc pull(double degrees) {
        return arc(Way.PULL, degrees, Size.USUAL);
    }

    private static Arc push(double degrees) {
        return arc(Way.PUSH, degrees, Size.USUAL);
    }

    /** So many degrees round a loop from its bottom: 90 is straight up, 180 the top. */
    private static FlightState round(double degrees, double mps) {
        double a = Math.toRadians(degrees);
        return new FlightState(
                0,
                new Vec(0, 0, 500),
                mps,
                new Vec(Math.cos(a), 0, Math.sin(a)),
                new Vec(-Math.sin(a), 0, Math.cos(a)));
    }

    @Test
    void atTheBottomTheWidthGivesTheLoadAskedFor() {
        assertThat(free(4).radiusM(pull(360), round(0, V))).isCloseTo(V2 / (G * 3), DRAWN);
        assertThat(free(4).radiusM(push(360), round(180, V))).isCloseTo(V2 / (G * 3), DRAWN);
        assertThat(free(1.3).radiusM(pull(360), round(0, V))).isCloseTo(V2 / (G * 0.3), DRAWN);
        assertThat(free(1.1).radiusM(pull(360), round(0, V))).isNaN();
        assertThat(bends(Rig.dragFree(), 4, Double.NaN).radiusM(push(360), round(180, V)))
                .isNaN();
    }

    @Test
    void fromHigherUpTheSpeedGainedOnTheWayDownIsCounted() {
        assertThat(free(6).radiusM(pull(180), round(180, V))).isCloseTo(V2 / (G * 5 - 3.6 * G), DRAWN);
        assertThat(free(6).radiusM(push(180), round(0, V))).isCloseTo(V2 / (G * 5 - 3.6 * G), DRAWN);
        assertThat(free(6).radiusM(pull(90), round(270, V))).isCloseTo(V2 / (G * 5 - 1.8 * G), DRAWN);
        assertThat(free(4.9).radiusM(pull(180), round(180, V))).isCloseTo(V2 / (G * 0.3), DRAWN);
        assertThat(free(4.7).radiusM(pull(180), round(180, V))).isNaN();
    }

    @Test
    void pushedOverTheTopItIsLightlyOutOfTheSeat() {
        assertThat(free(4).radiusM(push(45), round(0, V))).isCloseTo(V2 / (1.2 * G), DRAWN);
        assertThat(free(4).radiusM(push(60), round(60, V))).isCloseTo(V2 / (0.7 * G), DRAWN);
        Bends after = free(4);
        after.radiusM(pull(45), round(0, V));
        assertThat(after.radiusM(push(45), round(45, V))).isCloseTo(V2 / ((Math.sqrt(0.5) + 0.2) * G), DRAWN);
    }

    @Test
    void whereTheWingLimitsItsLoadAtTheSpeedOfTheBottomIsTheLoadThere() {
        double level = winged(9).radiusM(pull(360), round(0, V));
        assertThat(1 + V2 / (G * level)).isCloseTo(wingG(V, 1.5), within(2e-3));

        double top = winged(9).radiusM(pull(180), round(180, V));
        double atBottom = V2 + 3.6 * G * top;
        assertThat(1 + atBottom / (G * top)).isCloseTo(wingG(Math.sqrt(atBottom), 1.5), within(1e-2));

        double pushed = winged(9).radiusM(push(180), round(0, V));
        double pushedBottom = V2 + 3.6 * G * pushed;
        assertThat(1 + pushedBottom / (G * pushed)).isCloseTo(wingG(Math.sqrt(pushedBottom), 1.4), within(1e-2));
        assertThat(winged(9).radiusM(pull(360), round(0, 30))).isNaN();
    }

    @Test
    void theBottomOfALoopSetsTheWidthOfTheFigureAndASideDoesNot() {
        Bends begun = free(4);
        begun.radiusM(pull(360), round(0, V));
        assertThat(begun.radiusM(pull(180), round(180, 40))).isCloseTo(V2 / (G * 3), DRAWN);
        assertThat(begun.figureRadiusM(round(0, 40))).isCloseTo(V2 / (G * 3), DRAWN);

        Bends down = free(6);
        down.radiusM(pull(90), round(270, V));
        assertThat(down.figureRadiusM(round(0, 40))).isCloseTo(1600 / (G * 5), within(1e-9));
    }

    @Test
    void cornersAreShortAndThoseAtTheTopAreAlikeAndKeepSomeLoad() {
        Bends bends = free(4);
        Arc corner = arc(Way.PULL, 90, Size.CORNER);
        assertThat(bends.radiusM(corner, round(0, V))).isCloseTo(V2 / (G * 4), DRAWN);
        assertThat(bends.overTopM(round(180, 20))).isZero();
        assertThat(bends.radiusM(corner, round(90, 20))).isCloseTo(400 / (G * 3.2), DRAWN);
        assertThat(bends.radiusM(corner, round(180, 25))).isCloseTo(400 / (G * 3.2), DRAWN);
        assertThat(bends.radiusM(corner, round(270, V))).isCloseTo(V2 / (G * 4), DRAWN);
        assertThat(bends.overTopM(round(180, 20))).isCloseTo(2 * (V2 / (G * 4) - 400 / (G * 3.2)), within(0.2));
        assertThat(bends.overTopM(round(0, 20))).isZero();
        assertThat(bends.radiusM(pull(90), round(0, 40))).isCloseTo(V2 / (G * 4), DRAWN);
        assertThat(winged(9).radiusM(corner, round(0, V))).isCloseTo(V2 / (G * (wingG(V, 1.5) - 1)), DRAWN);
        assertThat(winged(9).radiusM(corner, round(0, 30))).isCloseTo(900 / (G * 0.3), DRAWN);

        Bends loopFirst = free(4);
        loopFirst.radiusM(pull(360), round(0, V));
        loopFirst.radiusM(corner, round(0, 40));
        assertThat(loopFirst.figureRadiusM(round(0, 40))).isCloseTo(V2 / (G * 3), DRAWN);
    }

    @Test
    void overTheTopItTurnsAsTheWingGivesUpToTwoAndAHalfG() {
        Arc over = arc(Way.PULL, 90, Size.OVER);
        assertThat(free(4).radiusM(over, round(90, 20))).isCloseTo(400 / (2.5 * G), DRAWN);
        assertThat(winged(4).radiusM(over, round(90, 40))).isCloseTo(1600 / (wingG(40, 1.5) * G), DRAWN);
        assertThat(winged(4).radiusM(over, round(90, 20))).isNaN();
    }

    @Test
    void whatIsPulledOverGetsTighterOnItsWayAndWhatIsPushedDoesNot() {
        Arc pulled = arc(Way.PULL, 180, Size.OVER);
        Arc pushed = arc(Way.PUSH, 180, Size.OVER);
        double atTheSide = LoopShape.ofTop(0.4).radius(0);
        assertThat(free(4).topShare(pulled, round(90, 20))).isEqualTo(0.4);
        assertThat(free(4).radiusM(pulled, round(90, 20)) * atTheSide).isCloseTo(400 / (2.5 * G), DRAWN);
        assertThat(free(4).topShare(pushed, round(90, 20))).isEqualTo(1);
        assertThat(free(4).radiusM(pushed, round(90, 20))).isCloseTo(400 / (2.5 * G), DRAWN);
    }

    @Test
    void theDropIsThatOfTheArcThatFollows() {
        Arc corner = arc(Way.PULL, 90, Size.CORNER);
        Bends bends = free(4);
        assertThat(bends.dropM(corner, round(270, V), 0, 0)).isZero();
        bends.radiusM(corner, round(0, V));
        assertThat(bends.dropM(corner, round(270, V), 0, 0)).isCloseTo(V2 / (G * 4), DRAWN);
        assertThat(bends.dropM(corner, round(300, V), 0, 0)).isCloseTo(0.5 * V2 / (G * 4), DRAWN);
        assertThat(bends.dropM(pull(180), round(180, V), 0, 0)).isCloseTo(2 * V2 / (G * 4), within(0.2));
    }

    @Test
    void withNothingBeforeItTheDropIsAtTheSpeedThereWillBe() {
        double square = V2 + 2 * G * 100 * 0.9;
        Bends bends = bends(Rig.dragFree(), 4, -3);
        assertThat(bends.dropM(pull(90), round(270, V), 400, 0)).isCloseTo(square / (G * 3), DRAWN);
        assertThat(bends.radiusM(pull(90), round(270, V))).isCloseTo(square / (G * 3), DRAWN);
        assertThat(bends(Rig.dragFree(), 4, -3).dropM(push(90), round(270, V), 400, 0))
                .isCloseTo(square / (G * 2), DRAWN);
        assertThat(free(4).dropM(pull(90), round(270, V), 600, 0)).isCloseTo(V2 / (G * 3), DRAWN);
        assertThat(winged(9).dropM(pull(90), round(270, V), 400, 0))
                .isCloseTo(square / (G * (wingG(Math.sqrt(square), 1.5) - 1)), DRAWN);
    }

    @Test
    void theTopIsHalfARoundFromTheBottomBothWaysUp() {
        assertThat(free(4).degreesToTop(pull(360), round(0, V))).isCloseTo(180, within(1e-9));
        assertThat(free(4).degreesToTop(pull(360), round(60, V))).isCloseTo(120, within(1e-9));
        assertThat(free(4).degreesToTop(pull(360), round(210, V))).isCloseTo(-30, within(1e-9));
        assertThat(free(4).degreesToTop(push(360), round(180, V))).isCloseTo(180, within(1e-6));
        assertThat(free(4).isAtTop(pull(180), round(187, V))).isTrue();
        assertThat(free(4).isAtTop(pull(180), round(189, V))).isFalse();
        assertThat(free(4).isAtTop(push(180), round(0, V))).isTrue();
        assertThat(free(4).isAtTop(push(180), round(180, V))).isFalse();
        assertThat(free(4).isLoop(pull(100))).isFalse();
        assertThat(free(4).isLoop(pull(101))).isTrue();
        assertThat(free(4).isLoop(new Arc(Way.PULL, null, 90.0, Size.USUAL, 0, 1, 1)))
                .isFalse();
    }

    @Test
    void aLoopIsCutAtItsTopWhereThePowerComesOff() {
        assertThat(free(4).pieces(pull(360), round(0, V)))
                .extracting(Arc::degrees)
                .containsExactly(180.0, 180.0);
        assertThat(free(4).pieces(pull(270), round(60, V)).get(1).degrees()).isCloseTo(150, within(1e-9));
        assertThat(free(4).pieces(pull(180.5), round(0, V))).containsExactly(pull(180.5));
        assertThat(free(4).pieces(pull(180), round(180, V))).containsExactly(pull(180));
        Bends even = new Bends(Rig.dragFree(), new Attempt(4, -4, 1, false, 1.3, new Attempt.Throttle(1, 1)));
        assertThat(even.pieces(pull(360), round(0, V))).containsExactly(pull(360));
    }

    /** Off its way by an angle, the path of a barrel roll bends by rate · v · sin of that angle. */
    @Test
    void aBarrelRollTakesTheTimeItsLoadAsksFor() {
        double round = 2 * Math.PI * V * BarrelCurve.SIN_OFF / G;
        assertThat(free(4).barrelS(round(0, V), 360)).isCloseTo(round / 1.7, DRAWN);
        assertThat(free(2).barrelS(round(0, V), 360)).isCloseTo(round, DRAWN);
        assertThat(free(1.2).barrelS(round(0, V), 180)).isCloseTo(round, DRAWN);
    }

    @Test
    void aTurnIsBankedAsFarAsTheWingCarriesIt() {
        assertThat(winged(9).bankDeg(round(0, V), 60.4)).isEqualTo(60);
        assertThat(winged(9).bankDeg(round(0, V), 85))
                .isEqualTo(Math.rint(Math.toDegrees(Math.acos(1 / wingG(V, 1.5)))));
        assertThat(winged(9).bankDeg(round(0, 30), 60)).isEqualTo(20);
    }

    @Test
    void aPullOutIsAUsualPullOutOfALineDownInAFigureWithoutAWidth() {
        FlightState down = round(270, V);
        assertThat(free(4).isPullOut(pull(90), down)).isTrue();
        assertThat(free(4).isPullOut(arc(Way.PULL, 90, Size.CORNER), down)).isFalse();
        assertThat(free(4).isPullOut(push(90), down)).isFalse();
        assertThat(free(4).isPullOut(pull(180), down)).isFalse();
        assertThat(free(4).isPullOut(pull(90), round(350, V))).isFalse();
        Bends begun = free(4);
        begun.radiusM(pull(90), round(0, V));
        assertThat(begun.isPullOut(pull(90), down)).isFalse();
        assertThat(free(4).pullOutG(down)).isEqualTo(4);
        assertThat(winged(9).pullOutG(down)).isCloseTo(wingG(V, 1.5), within(1e-9));
    }
}
