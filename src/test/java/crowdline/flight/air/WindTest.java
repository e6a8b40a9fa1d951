package crowdline.flight.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Forces;
import crowdline.show.DayAir;
import crowdline.show.WindAt;
import java.util.List;
import org.junit.jupiter.api.Test;

class WindTest {
    private static final double KT_MPS = 1852.0 / 3600;

    /** 10 kt from the west at the ground, 20 kt from the north at 1,000 ft, 30 kt from the north at 2,000 ft. */
    private static final Wind LAYERED = Wind.of(
            new DayAir(1013.25, 15, 270, 10, List.of(new WindAt(1000, 360, 20), new WindAt(2000, 360, 30)), null), 90);

    @Test
    void windAtAGivenHeightIsTheOneGiven() {
        // The A-axis points east: what comes from the west goes along it, what comes from the north goes to the crowd.
        assertThat(LAYERED.alongMps(10)).isCloseTo(10 * KT_MPS, within(1e-9));
        assertThat(LAYERED.awayMps(10)).isCloseTo(0, within(1e-9));
        assertThat(LAYERED.alongMps(304.8)).isCloseTo(0, within(1e-9));
        assertThat(LAYERED.awayMps(304.8)).isCloseTo(-20 * KT_MPS, within(1e-9));
    }

    @Test
    void componentsAreJoinedByStraightLines() {
        double middleM = (10 + 304.8) / 2;
        assertThat(LAYERED.alongMps(middleM)).isCloseTo(5 * KT_MPS, within(1e-9));
        assertThat(LAYERED.awayMps(middleM)).isCloseTo(-10 * KT_MPS, within(1e-9));
        assertThat(LAYERED.awayMps(457.2)).isCloseTo(-25 * KT_MPS, within(1e-9));
    }

    @Test
    void windAboveTheHighestGivenIsUnchanged() {
        assertThat(LAYERED.awayMps(5000)).isCloseTo(-30 * KT_MPS, within(1e-9));
        assertThat(LAYERED.growthPerS(5000, 1, 1)).isZero();
    }

    @Test
    void windBelowTheLowestFollowsThePowerLaw() {
        assertThat(LAYERED.alongMps(5)).isCloseTo(10 * KT_MPS * Math.pow(0.5, 1.0 / 7), within(1e-9));
        assertThat(LAYERED.alongMps(-30)).isEqualTo(LAYERED.alongMps(1)).isPositive();
    }

    @Test
    void windNeverJumpsWithHeight() {
        for (double z = -20; z < 1000; z += 0.1) {
            assertThat(LAYERED.alongMps(z + 0.1)).isCloseTo(LAYERED.alongMps(z), within(0.1));
            assertThat(LAYERED.awayMps(z + 0.1)).isCloseTo(LAYERED.awayMps(z), within(0.1));
        }
    }

    @Test
    void growthIsTheDerivativeOfTheWind() {
        for (double z : new double[] {0.5, 3, 7, 150, 400, 900}) {
            double along = (LAYERED.alongMps(z + 1e-5) - LAYERED.alongMps(z - 1e-5)) / 2e-5;
            double away = (LAYERED.awayMps(z + 1e-5) - LAYERED.awayMps(z - 1e-5)) / 2e-5;
            assertThat(LAYERED.growthPerS(z, 0.6, -0.8)).isCloseTo(0.6 * along - 0.8 * away, within(1e-6));
        }
    }

    @Test
    void steadyWindIsTheSameAtEveryHeight() {
        Wind steady = Wind.of(new DayAir(1013.25, 15, 262, 8, null), 75);
        for (double z = -5; z < 3000; z += 97) {
            assertThat(steady.alongMps(z)).isCloseTo(8 * KT_MPS * Math.cos(Math.toRadians(7)), within(1e-9));
            assertThat(steady.awayMps(z)).isCloseTo(-8 * KT_MPS * Math.sin(Math.toRadians(7)), within(1e-9));
            assertThat(steady.growthPerS(z, 1, 1)).isZero();
        }
    }

    /** Closed form (Galilei): in moving air all is as in still air, but carried along; within the error of the steps. */
    @Test
    void steadyWindCarriesAFlightAndChangesNothingElse() {
        FlightState still = fly(Wind.CALM);
        FlightState blown = fly(Wind.steady(200, 15, 65));
        assertThat(blown.tS()).isCloseTo(still.tS(), within(1e-3));
        assertThat(blown.speedMps()).isCloseTo(still.speedMps(), within(0.01));
        Vec carried = blown.place().plus(still.place().times(-1));
        double mps = 15 * KT_MPS;
        assertThat(carried.x()).isCloseTo(mps * Math.cos(Math.toRadians(315)) * still.tS(), within(0.05));
        assertThat(carried.y()).isCloseTo(-mps * Math.sin(Math.toRadians(315)) * still.tS(), within(0.05));
        assertThat(carried.z()).isCloseTo(0, within(0.05));
    }

    @Test
    void windAddedForOneFlightIsAddedAtEveryHeight() {
        Wind more = LAYERED.plus(1, -2);
        for (double z : new double[] {10, 200, 304.8, 500, 2000}) {
            assertThat(more.alongMps(z)).isCloseTo(LAYERED.alongMps(z) + 1, within(1e-9));
            assertThat(more.awayMps(z)).isCloseTo(LAYERED.awayMps(z) - 2, within(1e-9));
        }
    }

    /** Climbing into more headwind lifts airspeed: dv/dt = −dw/dz · climb · cos(path), here by hand for 45 degrees. */
    @Test
    void climbIntoAGrowingHeadwindGainsAirspeed() {
        Wind growing = Wind.of(new DayAir(1013.25, 15, 90, 0, List.of(new WindAt(2000, 90, 40)), null), 90);
        double perS = 40 * KT_MPS / (609.6 - 10);
        double half = Math.sqrt(0.5);
        Forces calm = new Forces(Rig.body(500, 9, 0, 0), Rig.VACUUM, Wind.CALM);
        Forces blown = new Forces(Rig.body(500, 9, 0, 0), Rig.VACUUM, growing);
        double gained =
                blown.alongMps2(300, 60, half, 0, half, 0, 0, 0) - calm.alongMps2(300, 60, half, 0, half, 0, 0, 0);
        assertThat(gained).isCloseTo(perS * 60 * half * half, within(1e-9));
    }

    private static FlightState fly(Wind wind) {
        Forces forces = new Forces(Body.of(Rig.biplane(), Variation.NONE), Rig.SEA_LEVEL, wind);
        return Rig.fly(forces, Rig.level(80, 300), Rig.pullG(360, 4));
    }
}
