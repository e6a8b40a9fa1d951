package crowdline.flight.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Forces;
import crowdline.show.figure.Element.Arc;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Way;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Bends that have no room for the figure's own width, and bends held over the ground in a steady wind of 10 m/s along the
 * display line. Closed forms of a drag-free body: the load at the bottom is 1 + v² / (g r) at the speed v over the ground,
 * and a height h that is lost adds 2 g h to the square of the airspeed, of which nine tenths are kept.
 */
class BendsInWindTest {
    private static final double G = 9.80665;
    private static final double KT = 1852.0 / 3600;
    private static final double V = 60;
    private static final double W = 10;
    private static final Offset<Double> DRAWN = within(0.0501);

    /** @param fromDeg 90 blows against what flies to the right, 270 along with it; the line points east */
    private static Bends bends(double fromDeg, double topShare, boolean inTheAir) {
        Forces forces = new Forces(Rig.body(500, 9, 0, 0), Rig.VACUUM, wind(fromDeg));
        return bends(forces, 4, topShare, inTheAir);
    }

    private static Wind wind(double fromDeg) {
        return Double.isNaN(fromDeg) ? Wind.CALM : Wind.steady(fromDeg, W / KT, 90);
    }

    private static Bends bends(Forces forces, double pullG, double topShare, boolean inTheAir) {
        return new Bends(forces, new Attempt(pullG, -pullG, topShare, inTheAir, 1.3, new Attempt.Throttle(1, 1)));
    }

    private static final double CALM = Double.NaN;

    private static Arc pull(double degrees) {
        return new Arc(Way.PULL, degrees, null, Size.USUAL, 0, 1, 1);
    }

    private static Arc over() {
        return new Arc(Way.PULL, 180.0, null, Size.OVER, 0, 1, 1);
    }

    /** So many degrees round a loop from its bottom, which is flown to the right. */
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
    void whereThereIsRoomTheArcBehindALineIsAsWideAsTheFigure() {
        Bends bends = bends(CALM, 1, false);
        double figureM = bends.radiusM(pull(90), round(0, V));
        assertThat(bends.dropM(pull(90), round(270, 30), 500 - figureM - 20, 15))
                .isCloseTo(figureM, DRAWN);
        assertThat(bends.radiusM(pull(90), round(270, 30))).isEqualTo(figureM);
    }

    /** 80 m are left for an arc that would be 122 m wide; the line needs 10 of them. The arc after it has its own width again. */
    @Test
    void whereThereIsNoneItIsDrawnTighterAndThatOneAlone() {
        Bends bends = bends(CALM, 1, false);
        double figureM = bends.radiusM(pull(90), round(0, V));
        assertThat(figureM).isCloseTo(V * V / (G * 3), DRAWN);
        assertThat(bends.dropM(pull(90), round(270, 20), 420, 10)).isCloseTo(70, DRAWN);
        assertThat(bends.radiusM(pull(90), round(270, 40))).isCloseTo(70, DRAWN);
        assertThat(bends.radiusM(pull(90), round(0, V))).isEqualTo(figureM);
    }

    @Test
    void noTighterThanIsPulledAtTheSpeedThere() {
        Bends bends = bends(CALM, 1, false);
        bends.radiusM(pull(90), round(0, V));
        double square = 40 * 40 + 2 * G * 80 * 0.9;
        assertThat(bends.dropM(pull(90), round(270, 40), 420, 60)).isCloseTo(square / (G * 3), DRAWN);
    }

    /** A line up ends under the top of what comes next; it is no way down. */
    @Test
    void aLineUpKeepsTheFiguresWidth() {
        Bends bends = bends(CALM, 1, false);
        double figureM = bends.radiusM(pull(45), round(0, V));
        bends.dropM(pull(225), round(225 - 180, 40), 490, 0);
        assertThat(bends.radiusM(pull(225), round(45, 40))).isEqualTo(figureM);
    }

    /** Down a line that was begun into the wind it flies out the other way, with the wind, and that much wider. */
    @Test
    void anArcThatLeavesWithTheWindIsAsWideAsItsLoadAsksThere() {
        Bends bends = bends(90, 1, false);
        double figureM = bends.radiusM(pull(90), round(0, V));
        assertThat(figureM).isCloseTo(Math.pow(V - W, 2) / (G * 3), DRAWN);
        FlightState down = new FlightState(0, new Vec(0, 0, 500), 30, Vec.DOWN, new Vec(-1, 0, 0));
        double bottom = Math.sqrt(30 * 30 + 2 * G * 200 * 0.9);
        assertThat(bends.dropM(pull(90), down, 300, 0)).isCloseTo(Math.pow(bottom + W, 2) / (G * 3), DRAWN);
        assertThat(bends.radiusM(pull(90), down)).isGreaterThan(figureM);
    }

    /** Half a loop down: what matters is how fast the ground goes by at its bottom, which it flies the other way. */
    @Test
    void halfALoopDownIsAsWideAsItsBottomAsks() {
        FlightState top = round(180, 40); // flies to the left, and to the right at the bottom
        Forces windy = new Forces(Rig.body(500, 9, 0, 0), Rig.VACUUM, wind(270));
        double calm = bends(Rig.dragFree(), 8, 1, false).radiusM(pull(180), top);
        double with = bends(windy, 8, 1, false).radiusM(pull(180), top);
        double share = Math.pow((40 + W) / 40, 2);
        assertThat(calm).isCloseTo(1600 / (G * 7 - 4 * G * 0.9), within(0.2));
        assertThat(with).isCloseTo(share * 1600 / (G * 7 - share * 4 * G * 0.9), within(0.2));
    }

    /** It is turned over slowly, at the speed over the ground that it has on top; never tighter than where it begins. */
    @Test
    void aLineUpIsTurnedOverAsWideAsTheWindMakesIt() {
        FlightState up = round(90, 30);
        double calm = bends(CALM, 1, false).radiusM(over(), up);
        assertThat(bends(90, 1, false).radiusM(over(), up) / calm).isCloseTo(Math.pow(40 / 30.0, 2), within(0.01));
        // Straight up it leans into the wind, and so much less of its speed is left along its way.
        assertThat(bends(270, 1, false).radiusM(over(), up) / calm).isCloseTo(1 - 1 / 9.0, within(0.01));
    }

    /** With the wind behind at its bottom it is against it on top, where so little ground goes by that it has to be tighter. */
    @Test
    void roundInTheAirIsTighterOnTopWithTheWindBehind() {
        assertThat(share(CALM, true)).isCloseTo(0.8, within(1e-9));
        assertThat(share(270, true)).isBetween(0.1, 0.5);
        assertThat(share(90, true)).isEqualTo(1);
        assertThat(share(270, false)).isEqualTo(0.8);
        assertThat(share(90, false)).isEqualTo(0.8);
    }

    private static double share(double fromDeg, boolean inTheAir) {
        Forces forces = new Forces(Body.of(Rig.monoplane(), Variation.NONE), Rig.SEA_LEVEL, wind(fromDeg));
        Bends bends = bends(forces, 4, 0.8, inTheAir);
        bends.radiusM(pull(360), round(0, V));
        return bends.topShare(pull(360), round(0, V));
    }
}
