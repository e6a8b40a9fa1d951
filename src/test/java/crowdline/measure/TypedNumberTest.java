package crowdline.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypedNumberTest {
    /**
     * Factors of NIST Special Publication 811 (2008), appendix B.8: pound 0.453 592 4 kg, horsepower (550 ft·lbf/s)
     * 745.699 9 W, metric horsepower 735.498 8 W, pound-force 4.448 222 N, inch of mercury 3.386 389 kPa, square foot
     * 0.092 903 04 m², degree Fahrenheit (t − 32)/1.8, nautical mile 1852 m, mile 1609.344 m; from memory.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1850 lb|mass, kg|839.15",
                "1,850 LBS|mass, kg|839.15",
                "820|mass, kg|820",
                "820 kg|mass, kg|820",
                "1.2 t|mass, kg|1200",
                "300 hp|power, kW|223.71",
                "300 PS|power, kW|220.65",
                "5,000 lbf|thrust, kN|22.24",
                "112 sq ft|wing area, m²|10.41",
                "59 F|Temperature, °C|15",
                "59°F|Temperature, °C|15",
                "-4 °F|Temperature, °C|-20",
                "18 C|Temperature, °C|18",
                "29.92 inHg|Pressure, hPa|1013.21",
                "1009 hPa|Pressure, hPa|1009",
                "2 min|Lasts, s|120",
                "12 s|Lasts, s|12",
                "240 degrees|Wind from, °|240",
                "8 m/s|Wind, kt|15.55",
                "1.2 km|To each side, m|1200",
                "0.5 mi|To each side, m|804.67",
                "1 NM|Beyond the line, m|1852",
                "1 km|Greatest height, ft|3280.84",
                "7 m|span, m|7",
                "3 aircraft|How many they are|3"
            })
    void numberIsTakenInTheUnitItIsTypedWith(String typed, String label, double kept) {
        assertThat(TypedNumber.read(typed, label)).hasValue(kept);
    }

    /** A unit that is passed over makes an aircraft twice as heavy, and a day in spring the hottest of all. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1850 stone|mass, kg",
                "59 K|Temperature, °C",
                "760 mmHg|Pressure, hPa",
                "12 kt|Lasts, s",
                "300 hp|mass, kg",
                "heavy|mass, kg",
                "''|mass, kg"
            })
    void unitOfSomethingElseIsRefused(String typed, String label) {
        assertThat(TypedNumber.read(typed, label)).isEmpty();
    }
}
