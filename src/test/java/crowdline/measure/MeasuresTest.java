package crowdline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.measure.Measures.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuresTest {
    private static final Measures METRIC = new Measures(SpeedUnit.KMH, LengthUnit.METRES);
    private static final Measures MILES = new Measures(SpeedUnit.MPH, LengthUnit.FEET);

    /** One knot is 1.852 km/h by definition, and a mile 1,609.344 m (international yard and pound agreement of 1959). */
    @Test
    void unitsAreWhatTheyAreByDefinition() {
        assertThat(METRIC.in(100, Dimension.SPEED)).isCloseTo(185.2, within(1e-9));
        assertThat(MILES.in(100, Dimension.SPEED)).isCloseTo(185_200 / 1609.344, within(1e-9));
        assertThat(METRIC.in(1000, Dimension.HEIGHT)).isCloseTo(304.8, within(1e-9));
        assertThat(METRIC.in(300, Dimension.LENGTH)).isEqualTo(300);
    }

    @Test
    void speedsAndHeightsAreWrittenInTheChosenUnit() {
        assertThat(Measures.USUAL.speed(93.4) + ", " + Measures.USUAL.height(1249.6))
                .isEqualTo("93 kt, 1,250 ft");
        assertThat(METRIC.speed(93.4) + ", " + METRIC.height(1249.6)).isEqualTo("173 km/h, 381 m");
        assertThat(MILES.speed(93.4) + ", " + MILES.roughly(1244)).isEqualTo("107 mph, 1,240 ft");
        assertThat(METRIC.roughly(1244)).isEqualTo("380 m");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Loop begins at 93 kt; it usually needs 105 kt.|Loop begins at 172 km/h; it usually needs 194 km/h.",
                "comes down to 1,250 ft, 50 ft below the base|comes down to 381 m, 15 m below the base",
                "Speed 93 to 120 kt, load 1.0 to 4.0 g|Speed 172 to 222 km/h, load 1.0 to 4.0 g",
                "800–1,250 ft|244–381 m",
                "asks for 4.5 g at 61.5 kt, 300 m out|asks for 4.5 g at 113.9 km/h, 300 m out",
                "comes to −40 ft, below the ground|comes to −12 m, below the ground",
                "CAVOK: no cloud below 5,000 ft; none is kept|CAVOK: no cloud below 1,524 m; none is kept",
                "\"Pass at 300 ft\" fits from 1,000 ft|\"Pass at 300 ft\" fits from 305 m",
                "12 ktx, A12 kt, 3 fts and feet|12 ktx, A12 kt, 3 fts and feet"
            })
    void sentenceIsToldInTheChosenUnits(String sentence, String told) {
        assertThat(METRIC.told(sentence)).isEqualTo(told);
        assertThat(Measures.USUAL.told(sentence)).isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Begins at, ft|Begins at, m",
                "Entry kt|Entry km/h",
                "spin height, ft a turn|spin height, m a turn",
                "To each side, m|To each side, m",
                "Begins at, ft: height, such as 800 ft|Begins at, m: height, such as 244 m"
            })
    void labelNamesTheChosenUnit(String label, String told) {
        assertThat(METRIC.label(label)).isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "300 m|HEIGHT|984.25",
                "300m|HEIGHT|984.25",
                "1,000 FT|HEIGHT|1000",
                "1000 feet|HEIGHT|1000",
                "800|HEIGHT|800",
                "140 kt|SPEED|140",
                "140 knots|SPEED|140",
                "259.28 km/h|SPEED|140",
                "100 mph|SPEED|86.9",
                "−50 ft|HEIGHT|-50",
                "1,000 ft|LENGTH|304.8",
                "300 m|LENGTH|300",
                "12 °|OTHER|12",
                "12.5 g|OTHER|12.5"
            })
    void typedNumberIsUnderstoodByItsUnit(String typed, Dimension dimension, double kept) {
        assertThat(Measures.read(typed, dimension)).hasValue(kept);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "300 kt|HEIGHT",
                "300 ft|SPEED",
                "fast|SPEED",
                "12 kt|LENGTH",
                "1e9|HEIGHT",
                "12345678|HEIGHT",
                "''|SPEED"
            })
    void whatIsNoSuchNumberIsNone(String typed, Dimension dimension) {
        assertThat(Measures.read(typed, dimension)).isEmpty();
    }

    @Test
    void numberWithoutUnitIsMeantInTheChosenOne() {
        assertThat(Measures.read(METRIC.meant("300", Dimension.HEIGHT), Dimension.HEIGHT))
                .hasValue(984.25);
        assertThat(Measures.read(METRIC.meant("300 ft", Dimension.HEIGHT), Dimension.HEIGHT))
                .hasValue(300);
        assertThat(Measures.USUAL.meant("300", Dimension.HEIGHT)).isEqualTo("300");
        assertThat(METRIC.meant("high", Dimension.HEIGHT)).isEqualTo("high");
    }

    /** What was typed stands in the field again as it was typed. */
    @Test
    void typedNumberIsShownAsItWasTyped() {
        for (int metres = 0; metres < 5_000; metres++) {
            double ft = Measures.read(metres + " m", Dimension.HEIGHT).orElseThrow();
            assertThat(METRIC.shown(String.valueOf(ft), Dimension.HEIGHT)).isEqualTo(String.valueOf(metres));
        }
        for (int kmh = 0; kmh < 1_000; kmh++) {
            double kt = Measures.read(kmh + " km/h", Dimension.SPEED).orElseThrow();
            assertThat(METRIC.shown(String.valueOf(kt), Dimension.SPEED)).isEqualTo(String.valueOf(kmh));
        }
    }

    @Test
    void unitsAreReadAsTheyAreAsked() {
        assertThat(Measures.of("km/h,m")).isEqualTo(METRIC);
        assertThat(Measures.of("M, KMH")).isEqualTo(METRIC);
        assertThat(Measures.of("mph")).isEqualTo(MILES);
        assertThat(Measures.of(METRIC.asAsked())).isEqualTo(METRIC);
        assertThatThrownBy(() -> Measures.of("furlongs"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "“furlongs” is no unit; speeds are in kt, km/h or mph and heights in ft or m, such as km/h,m");
    }
}
