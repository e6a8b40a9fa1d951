package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PropellerTest {
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
}
