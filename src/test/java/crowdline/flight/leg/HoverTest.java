package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The torque of 134 kW at 2,700 a minute, 473.9 N m, against 475 kg with a quarter of 2.64 m as radius of gyration. */
class HoverTest {
    private static final Percentage CLOSE = Percentage.withPercentage(0.05);
    private static final double INERTIA_KG_M2 = 475 * Math.pow(0.25 * 5.28 / 2, 2);

    private static FlightState up() {
        return new FlightState(0, new Vec(0, 0, 500), 10, Vec.UP, new Vec(-1, 0, 0));
    }

    /** Roll acceleration at an airspeed and a roll rate. */
    private static double accelerationRadPerS2(double mps, double radPerS, double power) {
        HoverLeg leg = new HoverLeg(Rig.seaLevel(Rig.biplane()), up(), 4, power);
        double[] dy = new double[6];
        leg.rates(0, new double[] {0, 0, 500, mps, 0, radPerS}, dy);
        assertThat(dy[4]).isEqualTo(radPerS);
        return dy[5];
    }

    @Test
    void fromRestTheTorqueTurnsItAgainstThePropeller() {
        assertThat(accelerationRadPerS2(0, 0, 1)).isCloseTo(-473.9 / INERTIA_KG_M2, CLOSE);
        assertThat(accelerationRadPerS2(0, 0, 0.5)).isCloseTo(-473.9 / 2 / INERTIA_KG_M2, CLOSE);
    }

    /** Roll damping, L = ½ ρ V² S b Clp p b / 2V, the usual definition of Clp, here −0.4, forwards and backwards. */
    @Test
    void flowDampsTheRollInProportionToSpeedAndRate() {
        double damping = 0.25 * 1.225 * 10 * 9.15 * 5.28 * 5.28 * 0.4 * 2 / INERTIA_KG_M2;
        for (double mps : new double[] {10, -10}) {
            double damped = accelerationRadPerS2(mps, 2, 0) - accelerationRadPerS2(0, 2, 0);
            assertThat(damped).isCloseTo(-damping, CLOSE);
        }
    }

    /** Two half wings flat against the wind of their own turning: 2 ∫ ½ ρ Cd c (p r)² r dr = ½ ρ Cd c p² (b/2)⁴ / 2. */
    @Test
    void wingsBeatTheAirWithTheSquareOfTheRateAndAgainstIt() {
        double chord = 9.15 / 5.28;
        double beating = 0.5 * 1.225 * 1.2 * chord * 9 * Math.pow(2.64, 4) / 2 / INERTIA_KG_M2;

        assertThat(accelerationRadPerS2(0, 3, 0)).isCloseTo(-beating, CLOSE);
        assertThat(accelerationRadPerS2(0, -3, 0)).isCloseTo(beating, CLOSE);
    }

    @Test
    void lastsItsSecondsAndRollsNothingElse() {
        FlightState end = Rig.unwatched()
                .fly(new HoverLeg(Rig.seaLevel(Rig.biplane()), up(), 4, 1), 0)
                .moment();

        assertThat(end.tS()).isCloseTo(4, within(1e-9));
        assertThat(end.direction()).isEqualTo(Vec.UP);
        assertThat(end.up().z()).isCloseTo(0, within(1e-9));
    }
}
