package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The integrator's own error, and the same equations given to another integrator. */
class ConvergenceTest {
    private static final Percentage MILLIONTH = Percentage.withPercentage(1e-4);

    @Test
    void halvingTheStepShowsTheFourthOrder() {
        Forces forces = Rig.seaLevel(Rig.monoplane());
        Moment start = Rig.level(Units.mpsFromKt(180), 300);
        double exact = loop(forces, start, 1.0 / 64);
        double coarse = Math.abs(loop(forces, start, 4) - exact);
        double fine = Math.abs(loop(forces, start, 2) - exact);
        double order = Math.log(coarse / fine) / Math.log(2);
        assertThat(order).isBetween(3.5, 5.5);
    }

    private static double loop(Forces forces, Moment start, double stepFactor) {
        return Rig.fly(forces, new Integrator(0, stepFactor, (leg, tS, legS, y) -> {}), start, Rig.pullRound(300, 150))
                .speedMps();
    }

    /** Hipparchus 4.0.1, Dormand–Prince 8(5,3) at 1e-12, on the same rates for the same time. */
    @Test
    void anotherIntegratorAgreesToAMillionth() {
        Forces forces = Rig.seaLevel(Rig.monoplane());
        Moment start = Rig.level(Units.mpsFromKt(180), 300);
        Leg leg = ArcLeg.byRadius(forces, start, Math.toRadians(300), 1, 150, 1);
        Integrator.Result ours = new Integrator(0, 1, (l, tS, legS, y) -> {}).fly(leg, 0);
        double[] theirs = hipparchus(leg, ours.moment().tS());
        assertThat(theirs[3]).isCloseTo(ours.moment().speedMps(), MILLIONTH);
        assertThat(theirs[2]).isCloseTo(ours.moment().place().z(), MILLIONTH);
        assertThat(theirs[4]).isCloseTo(Math.toRadians(300), MILLIONTH);
    }

    private static double[] hipparchus(Leg leg, double endS) {
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, 1, 1e-12, 1e-12);
        OrdinaryDifferentialEquation equations = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return leg.start().length;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double[] dy = new double[y.length];
                leg.rates(t, y, dy);
                return dy;
            }
        };
        ODEStateAndDerivative end = integrator.integrate(equations, new ODEState(0, leg.start()), endS);
        return end.getPrimaryState();
    }
}
