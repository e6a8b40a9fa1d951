package crowdline.flight.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmosphereTest {
    /**
     * Published tables by geometric altitude Z with their geopotential heights H = rZ/(r+Z), r = 6,356.766 km: ICAO Doc
     * 7488/3 (1993) for 0, 1000, 2000 and 11,000 m; US Standard Atmosphere 1976 for 500, 550, 850 and 2500 m.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 288.15, 101325, 1.225, 0.0001",
        "500, 284.900, 95461, 1.1673, 0.00005",
        "550, 284.575, 94890, 1.1616, 0.00005",
        "850, 282.626, 91523, 1.1281, 0.00005",
        "1000, 281.651, 89876.3, 1.11166, 0.000005",
        "2000, 275.154, 79501.4, 1.00655, 0.000005",
        "2500, 271.906, 74691, 0.95695, 0.00001",
        "11000, 216.774, 22699.9, 0.364801, 0.000001"
    })
    void standardDayMatchesThePublishedTables(double z, double kelvin, double pascal, double rho, double digit) {
        double h = 6_356_766 * z / (6_356_766 + z);
        assertThat(StandardAtmosphere.standardTemperatureK(h)).isCloseTo(kelvin, within(0.001));
        assertThat(StandardAtmosphere.pressurePa(h)).isCloseTo(pascal, within(1.0));
        assertThat(new StandardAtmosphere().densityKgM3(h)).isCloseTo(rho, within(digit));
    }

    /** Pilot's Handbook of Aeronautical Knowledge, FAA-H-8083-25C, fig. 11-3: feet to add for an altimeter setting. */
    @ParameterizedTest
    @CsvSource({
        "28.0, 1824",
        "29.7, 205",
        "29.92, 0",
        "30.0, -73",
        "30.1, -165",
        "30.3, -348",
        "30.5, -531",
        "31.0, -983"
    })
    void altimeterSettingGivesTheHandbooksPressureAltitude(double inHg, double addFt) {
        StandardAtmosphere air = new StandardAtmosphere(inHg * 33.86389, 15, 0);
        assertThat(Units.ftFromM(air.pressureHeightAtDatumM())).isCloseTo(addFt, within(2.0));
    }

    /** The same handbook, p. 11-20: 5,883 ft, 70 °F, 30.10 inHg give 5,718 ft pressure and about 7,700 ft density altitude. */
    @Test
    void handbooksDensityAltitudeProblemComesOut() {
        StandardAtmosphere air = new StandardAtmosphere(30.10 * 33.86389, (70 - 32) / 1.8, Units.mFromFt(5883));
        assertThat(Units.ftFromM(air.pressureHeightAtDatumM())).isCloseTo(5718, within(1.0));
        double thereKgM3 = new StandardAtmosphere(1013.25, 15, 0).densityKgM3(Units.mFromFt(7710));
        assertThat(air.densityKgM3(0)).isCloseTo(thereKgM3, within(0.0003));
        assertThat(air.densityKgM3(0)).isCloseTo(0.97156, within(0.0001));
    }

    @Test
    void hotAirIsThinner() {
        assertThat(new StandardAtmosphere(1013.25, 30, 0).densityKgM3(0))
                .isLessThan(new StandardAtmosphere(1013.25, 0, 0).densityKgM3(0));
    }

    @Test
    void tableStaysWithinTwoTenMillionthsOfTheFormula() {
        StandardAtmosphere air = new StandardAtmosphere(1003, 22, 120);
        DensityTable table = new DensityTable(air);
        for (double z = -100; z < 3000; z += 3.7) {
            assertThat(table.densityKgM3(z) / air.densityKgM3(z)).isCloseTo(1, within(2e-7));
        }
    }

    @Test
    void impossiblePressureIsRefusedWithTheRange() {
        assertThatThrownBy(() -> new StandardAtmosphere(Double.NaN, 15, 0))
                .hasMessage("QNH is NaN hPa; it must be from 850 to 1100");
    }

    @Test
    void windFromAlongTheAxisBlowsBackAlongIt() {
        // The A-axis points east to the commentator's right; wind from the east blows to the left.
        Wind wind = Wind.steady(90, 10, 90);
        assertThat(wind.alongMps(500)).isCloseTo(-5.144, within(0.001));
        assertThat(wind.awayMps(500)).isCloseTo(0, within(1e-9));
        // Facing north: wind from the south blows away from the crowd.
        assertThat(Wind.steady(180, 10, 90).awayMps(500)).isCloseTo(5.144, within(0.001));
    }

    @Test
    void endsOfTheRangesAreTaken() {
        assertThat(new StandardAtmosphere(850, -60, 0).densityKgM3(0)).isPositive();
        assertThat(new StandardAtmosphere(1100, 60, 0).densityKgM3(0)).isPositive();
    }
}
