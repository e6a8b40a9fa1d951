package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.Element.SlideKind;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Which way round the nose goes where it points elsewhere than the path. Flown to the right and pulled straight up: the
 * wheels look right, the canopy left, the left wing away from the crowd.
 */
class FallTest {
    private static final Offset<Double> SAME = within(1e-6);
    private final Forces forces = Rig.seaLevel(Rig.biplane());

    private static FlightState up(double kt) {
        return new FlightState(0, new Vec(0, 0, 500), Units.mpsFromKt(kt), Vec.UP, new Vec(-1, 0, 0));
    }

    /** What is seen of a leg when its nose has turned through this angle. */
    private static Look turned(FallLeg leg, double degrees) {
        double[] y = leg.start();
        y[6] = Math.toRadians(degrees);
        Look look = new Look();
        leg.look(1, y, look);
        return look;
    }

    private Look halfway(SlideKind kind) {
        Look look = new Look();
        boolean[] passed = {false};
        Rig.fly(
                forces,
                Rig.watched((leg, tS, legS, y) -> {
                    if (leg instanceof FallLeg && !passed[0]) {
                        leg.look(legS, y, look);
                        passed[0] = y[6] > Math.PI / 2;
                    }
                }),
                up(20),
                new Element.Slide(kind, 0));
        assertThat(passed[0]).isTrue();
        assertThat(look.tz).isCloseTo(0, within(0.1));
        return look;
    }

    @Test
    void wheelsDownSlideFallsForwardOntoTheWheels() {
        Look level = halfway(SlideKind.WHEELS_DOWN);

        assertThat(level.tx).isGreaterThan(0.9);
        assertThat(level.uz).isGreaterThan(0.9);
    }

    @Test
    void wheelsUpSlideFallsBackwardOntoTheCanopy() {
        Look level = halfway(SlideKind.WHEELS_UP);

        assertThat(level.tx).isLessThan(-0.9);
        assertThat(level.uz).isLessThan(-0.9);
    }

    /** Half a turn about the wings: the canopy, which looked left going up, looks right going down, either way round. */
    @Test
    void slideEndsStraightDownWithTheCanopyOnTheOtherSide() {
        for (SlideKind kind : SlideKind.values()) {
            FlightState end = Rig.fly(forces, up(20), new Element.Slide(kind, 0));
            assertThat(end.direction().z()).isCloseTo(-1, SAME);
            assertThat(end.up().x()).isCloseTo(1, SAME);
            assertThat(end.speedMps()).isPositive();
        }
    }

    @Test
    void pivotGoesRoundOverTheWingItIsNamedAfter() {
        assertThat(turned(FallLeg.pivot(forces, up(5), -1, 1), 90).ty).isCloseTo(1, SAME);
        assertThat(turned(FallLeg.pivot(forces, up(5), 1, 1), 90).ty).isCloseTo(-1, SAME);
        assertThat(halfwayPivot(Side.LEFT)).isGreaterThan(0.9);
        assertThat(halfwayPivot(Side.RIGHT)).isLessThan(-0.9);
        assertThat(halfwayPivot(Side.AWAY)).isGreaterThan(0.9);
        assertThat(halfwayPivot(Side.CROWD)).isLessThan(-0.9);
    }

    /** How far away from the crowd the nose points when it is furthest from the vertical. */
    private double halfwayPivot(Side side) {
        Look look = new Look();
        double[] furthest = {0};
        Integrator.Watcher watcher = (leg, tS, legS, y) -> {
            leg.look(legS, y, look);
            furthest[0] = Math.abs(look.ty) > Math.abs(furthest[0]) ? look.ty : furthest[0];
        };
        Rig.fly(forces, Rig.watched(watcher), up(60), new Element.Pivot(side, 1));
        return furthest[0];
    }

    /** A pivot is a yaw: the canopy looks where it looked before. It takes the airframe's own 1.8 s. */
    @Test
    void pivotKeepsTheCanopyAndTakesTheAirframesTime() {
        FallLeg leg = FallLeg.pivot(forces, up(5), -1, 1);
        FlightState end = Rig.unwatched().fly(leg, 0).moment();

        assertThat(end.tS()).isCloseTo(1.8, within(1e-3));
        assertThat(end.direction().z()).isCloseTo(-1, SAME);
        assertThat(end.up().x()).isCloseTo(-1, SAME);
    }

    /** Closed form: the rest of the speed goes in half the time of the half turn, v = g t / 2 without thrust and drag. */
    @Test
    void pivotBeginsWhereHalfItsTimeTakesTheRestOfTheSpeed() {
        double[] speed = {0};
        Integrator.Watcher watcher = (leg, tS, legS, y) -> {
            if (leg instanceof FallLeg && legS == 0) {
                speed[0] = y[5];
            }
        };
        Rig.fly(forces, Rig.watched(watcher), up(60), new Element.Pivot(Side.LEFT, 1));

        assertThat(speed[0]).isCloseTo(9.80665 * 0.9, within(1e-3));
    }

    /** Two whole turns end over end are four times nose up and nose down; 400° each second, and on until it falls. */
    @Test
    void tumbleGoesRoundAtTheAirframesRateAndEndsStraightDown() {
        FlightState from = up(20);
        Look begun = turned(FallLeg.tumble(forces, from, 1, 2, 1), 0);
        Look back = turned(FallLeg.tumble(forces, from, 1, 2, 1), 360);
        FlightState end = Rig.fly(forces, from, new Element.Tumble(Side.RIGHT, 2, 1));

        assertThat(begun.tz).isCloseTo(1, SAME);
        assertThat(back.tz).isCloseTo(1, SAME);
        assertThat(end.tS()).isGreaterThanOrEqualTo(720 / 400.0 - 1e-6);
        assertThat(end.direction().z()).isCloseTo(-1, SAME);
        assertThat(end.speedMps()).isGreaterThan(2.9);
    }

    /** The nose goes over forward, towards the wheels, and leans to the side named. */
    @Test
    void tumbleGoesOverForwardLeaningToItsSide() {
        Look right = turned(FallLeg.tumble(forces, up(20), 1, 2, 1), 90);
        Look left = turned(FallLeg.tumble(forces, up(20), -1, 2, 1), 90);

        assertThat(right.tx).isPositive().isCloseTo(left.tx, SAME);
        assertThat(right.ty).isCloseTo(-left.ty, SAME);
        // The axis leans 35 degrees, so the cosine of that is what the nose reaches forward.
        assertThat(right.tx).isCloseTo(Math.cos(Math.toRadians(35)), SAME);
    }
}
