package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Drive;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import org.junit.jupiter.api.Test;

/** Closed forms of a path that follows the height still to go within 5 s, itself 1.2 s behind, and a throttle within 3 s. */
class GuidedLegTest {
    private static GuidedLeg leg(Forces forces, double toM, double toMps, double seconds, boolean levelAtEnd) {
        GuidedLeg.Aim aim = new GuidedLeg.Aim(toM, toMps, 0, 1);
        return new GuidedLeg(forces, Rig.level(60, 500), aim, (t, y) -> t - seconds, levelAtEnd);
    }

    private static FlightState flown(Forces forces, double toM, double toMps, double seconds, boolean levelAtEnd) {
        return Rig.unwatched()
                .fly(leg(forces, toM, toMps, seconds, levelAtEnd), 0)
                .moment();
    }

    /** 1.2 e'' + e' + e / 5 = 0 from rest: e = e0 (3 exp(−t/3) − 2 exp(−t/2)), for slopes small enough to be straight. */
    @Test
    void heightStillToGoFadesAsTwoLagsInARow() {
        for (double t : new double[] {1, 3, 6, 12}) {
            double left = 2 * (3 * Math.exp(-t / 3) - 2 * Math.exp(-t / 2));
            assertThat(502
                            - flown(Rig.seaLevel(Rig.monoplane()), 502, 60, t, false)
                                    .place()
                                    .z())
                    .isCloseTo(left, within(1e-3));
            assertThat(flown(Rig.seaLevel(Rig.monoplane()), 498, 60, t, false)
                                    .place()
                                    .z()
                            - 498)
                    .isCloseTo(left, within(1e-3));
        }
    }

    @Test
    void farFromItsHeightItClimbsOrDescendsAtTwentyDegreesAndNoSteeper() {
        double steepest = Math.sin(Math.toRadians(20));

        Forces forces = Rig.seaLevel(Rig.monoplane());
        assertThat(flown(forces, 3000, 30, 6, false).direction().z()).isCloseTo(steepest, within(5e-3));
        assertThat(flown(forces, -2000, 60, 10, false).direction().z()).isCloseTo(-steepest, within(1e-3));
    }

    @Test
    void climbsNoSteeperThanItsPowerHoldsTheSpeed() {
        Forces forces = Rig.seaLevel(Rig.trainer());
        FlightState climbing = flown(forces, 3000, 50, 40, false);
        double excess = forces.alongMps2(
                        climbing.place().z(), climbing.speedMps(), 1, 0, 0, crowdline.measure.Units.G_MPS2, 1, 0)
                / crowdline.measure.Units.G_MPS2;

        assertThat(climbing.speedMps()).isCloseTo(50, within(1.0));
        assertThat(climbing.direction().z()).isCloseTo(excess, within(0.02)).isLessThan(0.2);
    }

    @Test
    void withoutPowerItSinksAndKeepsItsSpeed() {
        Forces forces = Rig.seaLevel(Rig.trainer());
        GuidedLeg.Aim aim = new GuidedLeg.Aim(3000, 45, 0, 0);
        FlightState sinking = Rig.unwatched()
                .fly(new GuidedLeg(forces, Rig.level(60, 500), aim, (t, y) -> t - 60, false), 0)
                .moment();

        assertThat(sinking.direction().z()).isNegative();
        assertThat(sinking.speedMps()).isCloseTo(45, within(2.0));
    }

    @Test
    void alongTheLineItComesBackToItGently() {
        Forces forces = Rig.seaLevel(Rig.monoplane());
        FlightState off = new FlightState(0, new Vec(0, -40, 500), 60, new Vec(1, 0, 0), Vec.UP);
        GuidedLeg.Aim aim = new GuidedLeg.Aim(500, 60, 0, 1, true, 0);
        FlightState on = Rig.unwatched()
                .fly(new GuidedLeg(forces, off, aim, (t, y) -> y[0] - 2000, true), 0)
                .moment();

        assertThat(on.place().y()).isCloseTo(0, within(1.0));
        assertThat(on.direction().x()).isEqualTo(1);
    }

    /** Between idle and full the throttle gives the speed change wanted, so what is missing fades with 3 s. */
    @Test
    void speedStillToGoFadesWithThreeSeconds() {
        Forces forces = Rig.seaLevel(Rig.biplane());
        for (double t : new double[] {1, 3, 6}) {
            assertThat(flown(forces, 500, 57, t, false).speedMps()).isCloseTo(57 + 3 * Math.exp(-t / 3), within(1e-4));
            assertThat(flown(forces, 500, 61, t, false).speedMps()).isCloseTo(61 - Math.exp(-t / 3), within(1e-4));
        }
    }

    @Test
    void throttleGivesNoMoreThanThePropellerAndNoLessThanIdle() {
        Forces forces = Rig.seaLevel(Rig.biplane());
        double full = flown(forces, 500, 200, 0.1, false).speedMps() - 60;
        double idle = flown(forces, 500, 6, 0.1, false).speedMps() - 60;
        Drive drive = forces.body.drive();
        double thrustMps2 = (drive.thrustN(60, 1.225, 1) - drive.thrustN(60, 1.225, 0)) / forces.body.massKg();

        // A tenth of a second changes thrust and drag by less than a hundredth.
        assertThat((full - idle) / 0.1).isCloseTo(thrustMps2, within(0.02 * thrustMps2));
        assertThat(idle).isNegative();
    }

    @Test
    void endsOnItsSlopeOrLevelIfThatIsWanted() {
        FlightState onSlope = flown(Rig.dragFree(), 3000, 60, 10, false);
        FlightState level = flown(Rig.dragFree(), 3000, 60, 10, true);

        assertThat(onSlope.up().dot(onSlope.direction())).isCloseTo(0, within(1e-9));
        assertThat(onSlope.direction().length()).isCloseTo(1, within(1e-9));
        assertThat(level.direction().z()).isZero();
        assertThat(level.direction().length()).isCloseTo(1, within(1e-9));
        assertThat(level.up().z()).isCloseTo(1, within(1e-9));
    }
}
