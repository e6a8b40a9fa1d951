package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
            assertThat(502 - flown(Rig.dragFree(), 502, 60, t, false).place().z())
                    .isCloseTo(left, within(1e-3));
            assertThat(flown(Rig.dragFree(), 498, 60, t, false).place().z() - 498)
                    .isCloseTo(left, within(1e-3));
        }
    }

    @Test
    void farFromItsHeightItClimbsOrDescendsAtTwentyDegreesAndNoSteeper() {
        double steepest = Math.sin(Math.toRadians(20));

        assertThat(flown(Rig.dragFree(), 3000, 60, 10, false).direction().z()).isCloseTo(steepest, within(1e-3));
        assertThat(flown(Rig.dragFree(), -2000, 60, 10, false).direction().z()).isCloseTo(-steepest, within(1e-3));
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
