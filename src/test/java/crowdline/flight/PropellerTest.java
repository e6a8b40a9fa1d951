package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PropellerTest {
    private final Propeller light = new Propeller(134_000, 2.9255, 2700 * 2 * Math.PI / 60, true);

    /**
     * Momentum theory solved apart from this code for an ideal disc at sea level: T = 2ρA(V+v)v, P = T(V+v). The power
     * is divided by the figure of merit so that the ideal values come out.
     */
    @ParameterizedTest
    @CsvSource({
        "134, 1.93, 0, 5049",
        "134, 1.93, 30, 3262",
        "134, 1.93, 50, 2394",
        "134, 1.93, 70, 1824",
        "224, 2.0, 0, 7282",
        "224, 2.0, 30, 5020",
        "224, 2.0, 50, 3829",
        "224, 2.0, 70, 2981",
        "224, 2.0, 100, 2180"
    })
    void thrustMatchesMomentumTheory(double kw, double diameter, double speed, double newtons) {
        double disc = Math.PI * diameter * diameter / 4;
        Propeller propeller = new Propeller(kw * 1000 / Propeller.FIGURE_OF_MERIT, disc, 280, true);
        assertThat(propeller.thrustN(speed, 1.225, 1)).isCloseTo(newtons, within(1.0));
    }

    /** Rankine–Froude with power and density both halved: T = 2ρA(V+v)v at the same v is half as much. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 60, 110})
    void thrustFallsInProportionToDensity(double speed) {
        assertThat(light.thrustN(speed, 0.6125, 1)).isCloseTo(light.thrustN(speed, 1.225, 1) / 2, within(1e-9));
    }

    /** At rest T³ = 2ρA(Pf)², so a quarter of the power gives 4^(−2/3) of the thrust. */
    @Test
    void thrustAtRestGrowsWithTheTwoThirdsPowerOfPower() {
        double whole = light.thrustN(0, 1.225, 1);

        assertThat(Math.pow(whole, 3)).isCloseTo(2 * 1.225 * light.discM2() * Math.pow(0.8 * 134_000, 2), within(1.0));
        assertThat(light.thrustN(0, 1.225, 0.25)).isCloseTo(whole * Math.pow(4, -2.0 / 3), within(1e-6));
    }

    @Test
    void slidingBackItPullsAsAtRest() {
        assertThat(light.thrustN(-15, 1.225, 1)).isEqualTo(light.thrustN(0, 1.225, 1));
    }

    @Test
    void withoutPowerItGivesNothing() {
        assertThat(light.thrustN(40, 1.225, 0)).isZero();
        assertThat(NoDrive.NONE.thrustN(40, 1.225, 1)).isZero();
        assertThat(NoDrive.NONE.torqueNm(1.225, 1)).isZero();
    }

    /** Power is torque times rotation: 134 kW at 2,700 a minute turn with 473.9 N m. */
    @Test
    void torqueIsPowerOverRotation() {
        assertThat(-light.torqueNm(1.225, 1)).isCloseTo(473.9, within(0.1));
        assertThat(-light.torqueNm(1.225, 0.5)).isCloseTo(473.9 / 2, within(0.1));
        assertThat(-light.torqueNm(0.6125, 1)).isCloseTo(473.9 / 2, within(0.1));
    }
}
