package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.show.figure.SpinKind;
import org.junit.jupiter.api.Test;

/** Forces of a fall in numbers: the biplane's 9.15 m² and 475 kg, falling at 20 m/s in air of 1.225 kg/m³. */
class FallForcesTest {
    private static final double MPS = 20;
    private static final double Q_S = 0.5 * 1.225 * MPS * MPS * 9.15;

    private static FlightState up() {
        return new FlightState(0, new Vec(0, 0, 500), 0.2, Vec.UP, new Vec(-1, 0, 0));
    }

    private static FallLeg slide(Wind wind) {
        Body body = Body.of(Rig.biplane(), Variation.NONE);
        return FallLeg.slide(new Forces(body, Rig.SEA_LEVEL, wind), up(), 1, 0);
    }

    /** Falling straight down with the nose this far round, turning at a rate. */
    private static double[] falling(double degrees, double radPerS) {
        return new double[] {0, 0, 500, 0, 0, -MPS, Math.toRadians(degrees), radPerS};
    }

    /** Drag with the sine of the angle to the wind squared: CD0 tail first or nose first, 1.2 more flat (flat-plate data). */
    @Test
    void dragGrowsFromThatOfTheLineToThatOfAFlatPlate() {
        Look look = new Look();
        for (double degrees : new double[] {0, 30, 90, 180}) {
            slide(Wind.CALM).look(1, falling(degrees, 0), look);
            double sine = Math.sin(Math.toRadians(degrees));
            assertThat(look.dragN).isCloseTo(Q_S * (0.045 + 1.2 * sine * sine), within(0.01));
        }
    }

    /** What is felt is drag along the canopy: nothing nose first, all of it flat on. */
    @Test
    void loadIsTheDragAlongTheCanopy() {
        Look look = new Look();
        slide(Wind.CALM).look(1, falling(90, 0), look);

        assertThat(look.g).isCloseTo(Q_S * 1.245 / (475 * 9.80665), within(1e-6));
    }

    /** φ'' = 2 (v/L)² sin(angle to the motion) − 0.6 (v/L) φ', with 4.8 m for L. */
    @Test
    void noseIsThrownOverByTheWindFromBehindAndDamped() {
        double perS = MPS / 4.8;
        for (double degrees : new double[] {10, 60, 120}) {
            double[] dy = new double[8];
            slide(Wind.CALM).rates(1, falling(degrees, 0.5), dy);
            double thrown = 2 * perS * perS * Math.sin(Math.toRadians(degrees));
            assertThat(dy[7]).isCloseTo(thrown - 0.6 * perS * 0.5, within(1e-6));
            assertThat(dy[6]).isEqualTo(0.5);
        }
    }

    /** Closed form: what falls is carried by the wind like all else; 20 kt from the west along an axis to the east. */
    @Test
    void windCarriesAFallAndASpin() {
        Wind westerly = Wind.steady(270, 20, 90);
        double[] fall = new double[8];
        slide(westerly).rates(1, falling(90, 0), fall);
        Forces forces = new Forces(Body.of(Rig.biplane(), Variation.NONE), Rig.SEA_LEVEL, westerly);
        double[] spin = new double[7];
        new SpinLeg(forces, Rig.level(22, 1500), SpinKind.UPRIGHT, 1, 2)
                .rates(1, new double[] {0, 0, 900, 0, 0, -40, 3}, spin);

        assertThat(fall[0]).isCloseTo(20 * 1852 / 3600.0, within(1e-9));
        assertThat(spin[0]).isCloseTo(20 * 1852 / 3600.0, within(1e-9));
        assertThat(spin[2]).isEqualTo(-40);
    }
}
