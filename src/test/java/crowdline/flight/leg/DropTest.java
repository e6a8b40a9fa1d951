package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.air.StandardAtmosphere;
import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import org.junit.jupiter.api.Test;

/**
 * NASA's check cases for flight simulations, a sphere of one slug and half a foot across dropped from 30,000 ft over the
 * equator, cases 1, 6 and 7: values after 30 s of two simulations, which agree to 0.05 m, from NASA's open repository
 * simupy-flight, folder NESC_data. Our air, wind, drag and integrator are under test; the earth's own gravity stands in
 * for the standard one.
 */
class DropTest {
    private static final double FROM_M = Units.mFromFt(30000);
    private static final double SLUG_KG = 14.593903;
    private static final double AREA_M2 = 0.1963495 * 0.3048 * 0.3048;
    private static final double NO_WIND = 0;
    private static final double TWENTY_FEET_PER_S = 6.096;

    @Test
    void withoutDragItFallsAsCaseOneSays() {
        double[] end = drop(0, NO_WIND);
        assertThat(end[2]).isCloseTo(4754.55, within(0.5));
        assertThat(end[5]).isCloseTo(-292.70, within(0.05));
    }

    @Test
    void withDragItFallsAsCaseSixSays() {
        double[] end = drop(0.1, NO_WIND);
        assertThat(end[2]).isCloseTo(4963.52, within(0.5));
        assertThat(end[5]).isCloseTo(-263.35, within(0.05));
    }

    /** Case 7 has a steady wind; by how much further east than in case 6 it falls leaves the earth's turning out. */
    @Test
    void inAWindItDriftsAsCaseSevenSays() {
        double[] still = drop(0.1, NO_WIND);
        double[] blown = drop(0.1, TWENTY_FEET_PER_S);
        assertThat(blown[2]).isCloseTo(4963.74, within(0.5));
        assertThat(blown[0] - still[0]).isCloseTo(8.37, within(0.02));
    }

    private static double[] drop(double cd, double windMps) {
        Body sphere = Rig.body(SLUG_KG, AREA_M2, cd, 0);
        Forces forces = new Forces(sphere, new StandardAtmosphere(), Wind.CALM.plus(windMps, 0));
        double[] end = new double[6];
        Integrator.Watcher watcher = (leg, tS, legS, y) -> System.arraycopy(y, 0, end, 0, end.length);
        new Integrator(Integrator.NO_GRID, Integrator.FINE, watcher).fly(new Drop(forces, windMps), 0);
        return end;
    }

    /** At rest over the ground at first: coordinates are x, y, z and three velocities through the air. */
    private record Drop(Forces forces, double windMps) implements Leg {
        /** At the equator, falling with height as an inverse square does there (World Geodetic System 1984). */
        private static double gravityMps2(double heightM) {
            return 9.780327 - 3.086e-6 * heightM;
        }

        @Override
        public double[] start() {
            return new double[] {0, 0, FROM_M, -windMps, 0, 0};
        }

        @Override
        public void rates(double t, double[] y, double[] dy) {
            System.arraycopy(y, 3, dy, 0, 3);
            forces.drift(y[2], dy);
            double speed = Math.sqrt(y[3] * y[3] + y[4] * y[4] + y[5] * y[5]);
            double drag = forces.drag(forces.rho(y[2]), speed, 0, 0) / forces.body.massKg();
            for (int i = 3; i < 6; i++) {
                dy[i] = speed == 0 ? 0 : -drag * y[i] / speed;
            }
            dy[5] -= gravityMps2(y[2]);
        }

        @Override
        public double end(double t, double[] y) {
            return t - 30;
        }

        @Override
        public double dueS() {
            return 30;
        }

        @Override
        public void look(double t, double[] y, Look look) {
            look.direction(0, 0, -1);
        }

        @Override
        public FlightState after(double tS, double t, double[] y) {
            return new FlightState(tS, new Vec(y[0], y[1], y[2]), -y[5], Vec.DOWN, new Vec(1, 0, 0));
        }
    }
}
