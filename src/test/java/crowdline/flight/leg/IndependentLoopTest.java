package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.air.StandardAtmosphere;
import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Loops flown by an independent six-degree-of-freedom simulation (JSBSim 1.3.2, own runs, load-factor autopilot). The
 * same lift over weight, thrust and drag polar, fed to the point mass every half second, must give the same top.
 */
class IndependentLoopTest {
    private static final Percentage TWO_PER_CENT = Percentage.withPercentage(2);

    /** A glider (283.5 kg, 14.86 m², CD = 0.016 + 0.031 CL²), already pulling up: its top is at 1,082.93 m, 3.9 s later. */
    @Test
    void gliderReachesTheSameTop() {
        double[] g = {3.399, 3.788, 3.65, 3.253, 2.454, 1.586, 0.936, 0.531, 0.348, 0.373, 0.633};
        Top top = fly(Rig.body(283.495, 14.86, 0.016, 0.031), 1002.04, 46.6544, 11.1663, g, new double[g.length]);
        assertThat(top.heightM() - 1002.04).isCloseTo(1082.93 - 1002.04, TWO_PER_CENT);
        assertThat(top.tS()).isCloseTo(3.9, TWO_PER_CENT);
    }

    /** A turboprop trainer (2,721 kg, 16.35 m², CD = 0.0184 + 0.108 CL²), already pulling up: top at 1,509.4 m, 9 s later. */
    @Test
    void trainerReachesTheSameTop() {
        double[] g = {
            3.791, 3.803, 3.781, 3.739, 3.683, 3.541, 3.448, 3.276, 3.034, 2.718, 2.408, 2.103, 1.826, 1.588, 1.394,
            1.247, 1.148, 1.101, 1.105, 1.16, 1.262, 1.403
        };
        double[] thrustN = {
            6144, 6208, 6289, 6386, 6497, 6619, 6751, 6889, 7031, 7170, 7302, 7423, 7485, 7498, 7509, 7518, 7524, 7526,
            7524, 7519, 7510, 7499
        };
        Top top = fly(Rig.body(2721, 16.35, 0.0184, 0.108), 1014.01, 118.525, 12.1866, g, thrustN);
        assertThat(top.heightM() - 1014.01).isCloseTo(1509.4 - 1014.01, TWO_PER_CENT);
        assertThat(top.tS()).isCloseTo(9.0, TWO_PER_CENT);
    }

    private record Top(double heightM, double tS) {}

    private static Top fly(Body body, double heightM, double speedMps, double pathDeg, double[] g, double[] thrustN) {
        Forces forces = new Forces(body, new StandardAtmosphere(), Wind.CALM);
        double[] top = {Double.NEGATIVE_INFINITY, 0};
        Integrator.Watcher watcher = (leg, tS, legS, y) -> {
            if (y[2] > top[0]) {
                top[0] = y[2];
                top[1] = tS;
            }
        };
        double path = Math.toRadians(pathDeg);
        Vec direction = new Vec(Math.cos(path), 0, Math.sin(path));
        Vec up = new Vec(-Math.sin(path), 0, Math.cos(path));
        FlightState start = new FlightState(0, new Vec(0, 0, heightM), speedMps, direction, up);
        Rig.watched(watcher).fly(new HistoryLeg(forces, start, g, thrustN), 0);
        return new Top(top[0], top[1]);
    }

    /** A vertical plane flown to histories of lift over weight and thrust, one value every half second. */
    private static final class HistoryLeg implements Leg {
        private final Forces forces;
        private final FlightState from;
        private final double[] loadG;
        private final double[] thrustN;

        HistoryLeg(Forces forces, FlightState from, double[] loadG, double[] thrustN) {
            this.forces = forces;
            this.from = from;
            this.loadG = loadG;
            this.thrustN = thrustN;
        }

        private static double at(double[] history, double t) {
            double place = Math.min(t / 0.5, history.length - 1.001);
            int i = (int) place;
            return history[i] + (place - i) * (history[i + 1] - history[i]);
        }

        @Override
        public double[] start() {
            return new double[] {
                0,
                0,
                from.place().z(),
                from.speedMps(),
                Math.asin(from.direction().z())
            };
        }

        @Override
        public void rates(double t, double[] y, double[] dy) {
            double c = Math.cos(y[4]);
            double s = Math.sin(y[4]);
            double g = at(loadG, t);
            forces.move(y, y[3], c, 0, s, dy);
            dy[3] = forces.alongMps2(y[2], y[3], c, 0, s, Units.G_MPS2 * g, 0, 0)
                    + at(thrustN, t) / forces.body.massKg();
            dy[4] = Units.G_MPS2 * (g - c) / y[3];
        }

        @Override
        public double end(double t, double[] y) {
            return t - (loadG.length - 1) * 0.5;
        }

        @Override
        public void look(double t, double[] y, Look look) {
            look.direction(Math.cos(y[4]), 0, Math.sin(y[4]));
        }

        @Override
        public FlightState after(double tS, double t, double[] y) {
            return from;
        }
    }
}
