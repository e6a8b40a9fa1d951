package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.measure.Units;
import crowdline.show.figure.SpinKind;
import org.assertj.core.data.Percentage;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The integrator's own error, and the same equations given to another integrator. */
class ConvergenceTest {
    private static final Percentage MILLIONTH = Percentage.withPercentage(1e-4);

    private static final double FOUR_SECONDS = 4;

    @Test
    void halvingTheStepShowsTheFifthOrder() {
        assertThat(order(8, 1)).isBetween(4.5, 5.5);
    }

    @Test
    void valuesWithinAStepAreOfTheFourthOrder() {
        assertThat(order(8, 0.4)).isBetween(3.5, 5.5);
    }

    /** A spin builds up its rotation with the time since it began, so its rates must be asked for at the right times. */
    @Test
    void ratesThatDependOnTimeAreOfTheFifthOrderToo() {
        SpinLeg spin = new SpinLeg(Rig.seaLevel(Rig.monoplane()), Rig.level(30, 1000), SpinKind.UPRIGHT, 1, 4);

        assertThat(Math.log(error(spin, 8, 1) / error(spin, 16, 1)) / Math.log(2))
                .isBetween(4.5, 6.0);
    }

    /** How the largest error falls when the steps are halved; the last step is only gone through to a share. */
    private static double order(int steps, double share) {
        return Math.log(error(loop(), steps, share) / error(loop(), 2 * steps, share)) / Math.log(2);
    }

    private static double error(Leg leg, int steps, double share) {
        double[] ours = stepped(leg, steps, share);
        double[] theirs = hipparchus(leg, FOUR_SECONDS * (steps - 1 + share) / steps);
        double most = 0;
        for (int i = 0; i < ours.length; i++) {
            most = Math.max(most, Math.abs(ours[i] - theirs[i]));
        }
        return most;
    }

    private static double[] stepped(Leg leg, int steps, double share) {
        DormandPrince pair = new DormandPrince();
        double h = FOUR_SECONDS / steps;
        double[] y = leg.start();
        double[] next = new double[y.length];
        pair.begin(leg, 0, y);
        for (int i = 0; i < steps - 1; i++) {
            pair.advance(leg, i * h, y, h, next);
            pair.goOn();
            System.arraycopy(next, 0, y, 0, y.length);
        }
        pair.advance(leg, (steps - 1) * h, y, h, next);
        double[] between = new double[y.length];
        pair.between(y, h, next, share, between);
        return between;
    }

    private static Leg loop() {
        FlightState start = Rig.level(Units.mpsFromKt(180), 300);
        return ArcLeg.byRadius(Rig.seaLevel(Rig.monoplane()), start, Math.toRadians(300), 1, 150, 1);
    }

    /** Hipparchus 4.0.1, Dormand–Prince 8(5,3) at 1e-12, on the same rates for the same time. */
    @Test
    void anotherIntegratorAgreesToAMillionth() {
        Leg leg = loop();
        Integrator.Result ours = Rig.unwatched().fly(leg, 0);
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
