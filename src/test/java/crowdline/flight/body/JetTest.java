package crowdline.flight.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.air.StandardAtmosphere;
import crowdline.show.aircraft.Engine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the generic turbine tables of JSBSim-Team/jsbsim (commit 0b688c801c52, engine data files). */
class JetTest {
    private static final Jet DRY = Jet.of(new Engine.Jet(10, null), 1);
    private static final Jet REHEAT = Jet.of(new Engine.Jet(79.2, 129.0), 1);
    /** Speed of sound where the tables' heights are, ISO 2533. */
    private static double soundMps(double heightFt) {
        return Math.sqrt(1.4 * 287.05287 * (288.15 - 0.0065 * heightFt * 0.3048));
    }

    private static double rho(double heightFt) {
        return new StandardAtmosphere().densityKgM3(heightFt * 0.3048);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 1.000, 0.001",
        "10000, 0, 0.740, 0.015",
        "20000, 0, 0.534, 0.011",
        "0, 0.2, 0.934, 0.02",
        "0, 0.4, 0.921, 0.02",
        "0, 0.6, 0.951, 0.02",
        "0, 0.8, 1.020, 0.02",
        "10000, 0.4, 0.692, 0.02",
        "10000, 0.6, 0.721, 0.02",
        "20000, 0.4, 0.506, 0.02"
    })
    void dryThrustFallsWithHeightAndMachAsTabled(double heightFt, double mach, double share, double tolerance) {
        assertThat(DRY.thrustN(mach * soundMps(heightFt), rho(heightFt), 1) / 10_000)
                .isCloseTo(share, within(tolerance));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 1.000",
        "10000, 0, 0.818",
        "20000, 0, 0.663",
        "30000, 0, 0.528",
        "0, 0.4, 0.947",
        "0, 0.8, 0.994",
        "0, 1.0, 1.053"
    })
    void thrustWithReheatFallsLess(double heightFt, double mach, double share) {
        assertThat(REHEAT.thrustN(mach * soundMps(heightFt), rho(heightFt), 1) / 129_000)
                .isCloseTo(share, within(0.012));
    }

    /** Tabled idle: 0.049 of dry thrust at rest, 0.050 and 0.005 at Mach 0.2 and 0.4, then 0 or, for fighters, -0.080. */
    @ParameterizedTest
    @CsvSource({"0, 0.049, 0.05", "0.2, 0.035, 0.05", "0.4, 0, 0.01", "0.6, -0.080, 0"})
    void idleThrustFadesWithSpeed(double mach, double least, double most) {
        assertThat(DRY.thrustN(mach * soundMps(0), 1.225, 0) / 10_000).isBetween(least, most + 1e-9);
        assertThat(REHEAT.thrustN(mach * soundMps(0), 1.225, 0) / 79_200).isBetween(least, most + 1e-9);
    }

    @Test
    void thrustGoesInProportionBetweenIdleAndFull() {
        double half = DRY.thrustN(100, 1.225, 0.5);

        assertThat(half).isCloseTo((DRY.thrustN(100, 1.225, 0) + DRY.thrustN(100, 1.225, 1)) / 2, within(1e-9));
    }

    @Test
    void aJetTurnsNothing() {
        assertThat(DRY.torqueNm(1.225, 1)).isZero();
    }
}
