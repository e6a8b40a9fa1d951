package crowdline.show.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.DayAir;
import crowdline.show.WindAt;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MetarTest {
    private static final DayAir BEFORE = new DayAir(1001, 3, 100, 7, 1234.0);

    private static MetarAir read(String text) {
        return Metar.read(text, BEFORE);
    }

    /**
     * ICAO Annex 3, example A3-1, with its published decoding: WMO, IWXXM examples, metar-A3-1.tac and .xml (240 degrees,
     * 4.0 m/s, 17.0 °C, 1018 hPa, layers SCT 1000 ft and OVC 2000 ft).
     */
    @Test
    void exampleOfIcaoAnnex3ReadsAsPublished() {
        MetarAir metar =
                read("METAR YUDO 221630Z 24004MPS 0600 R12/1000U DZ FG SCT010 OVC020 17/16 Q1018 BECMG TL1700\n"
                        + "0800 FG BECMG AT1800 9999 NSW");
        assertThat(metar.air().windFromDeg()).isEqualTo(240);
        assertThat(metar.air().windKt()).isCloseTo(4.0 * 3600 / 1852, within(1e-9));
        assertThat(metar.air().temperatureC()).isEqualTo(17);
        assertThat(metar.air().qnhHpa()).isEqualTo(1018);
        assertThat(metar.air().cloudBaseFt()).isEqualTo(2000);
        assertThat(metar.notes())
                .contains("Not used: YUDO, 0600, R12/1000U, DZ, FG")
                .contains("The trend is not used: BECMG TL1700 0800 FG BECMG AT1800 9999 NSW");
    }

    /** ICAO Annex 3, example A3-2; decoding: WMO, IWXXM examples, speci-A3-2.xml (050°, 25 kt, 25 °C, 1008 hPa, 500 ft). */
    @Test
    void specialReportOfIcaoAnnex3ReadsAsPublished() {
        MetarAir metar = read("SPECI YUDO 151115Z 05025G37KT 3000 1200NE +TSRA BKN005CB 25/22 Q1008 TEMPO TL1200 0600\n"
                + "BECMG AT1200 8000 NSW NSC");
        assertThat(metar.air()).isEqualTo(new DayAir(1008, 25, 50, 25, 500.0));
        assertThat(metar.notes())
                .contains("The gusts of 05025G37KT are not used; the wind blows at its mean")
                .noneMatch(n -> n.startsWith("NSC"));
    }

    /**
     * FAA, Aeronautical Information Manual, key to the METAR, figure 7-1-19: wind 220° 15 kt gusting 25, cloud 1000 ft
     * overcast, 18 °C, 29.92 inches of mercury, which ICAO Doc 7488 gives as 1013.25 hPa.
     */
    @Test
    void exampleOfTheFaaReadsAsPublished() {
        MetarAir metar = read("METAR KPIT 091955Z COR 22015G25KT 3/4SM R28L/2600FT TSRA OVC010CB 18/16 A2992 RMK SLP045"
                + " T01820159");
        assertThat(metar.air().windFromDeg()).isEqualTo(220);
        assertThat(metar.air().windKt()).isEqualTo(15);
        assertThat(metar.air().temperatureC()).isEqualTo(18);
        assertThat(metar.air().qnhHpa()).isCloseTo(1013.25, within(0.1));
        assertThat(metar.air().cloudBaseFt()).isEqualTo(1000);
        assertThat(metar.notes())
                .contains("Remarks are not used: RMK SLP045 T01820159")
                .contains("COR: a corrected report")
                .contains("Not used: KPIT, 3/4SM, R28L/2600FT, TSRA");
    }

    @Test
    void frostIsWrittenWithAnM() {
        assertThat(read("00000KT M04/M06 Q0998").air().temperatureC()).isEqualTo(-4);
        assertThat(read("00000KT M00/M01 Q0998").air().temperatureC()).isZero();
    }

    @Test
    void calmIsCalmAndVariableWindCountsAsCalm() {
        assertThat(read("00000KT").air().windKt()).isZero();
        MetarAir variable = read("VRB03KT");
        assertThat(variable.air().windKt()).isZero();
        assertThat(variable.notes()).contains("The wind is variable at 3 kt; without a direction it counts as calm");
    }

    @Test
    void variableSectorIsNotedAndTheMeanUsed() {
        MetarAir metar = read("21012KT 160V250");
        assertThat(metar.air().windFromDeg()).isEqualTo(210);
        assertThat(metar.notes()).contains("The wind varies between 160° and 250°; its mean direction is used");
    }

    @Test
    void lowestLayerThatCoversMoreThanHalfTheSkyIsTheBase() {
        assertThat(read("FEW008 SCT015 OVC090 BKN030").air().cloudBaseFt()).isEqualTo(3000);
        assertThat(read("VV002").air().cloudBaseFt()).isEqualTo(200);
        assertThat(read("FEW008 SCT015CB").air().cloudBaseFt()).isNull();
        assertThat(read("FEW008 SCT015CB").notes())
                .contains("FEW008, SCT015CB: half the sky or less, which does not count as a base");
    }

    @ParameterizedTest
    @CsvSource({"CAVOK", "NSC", "NCD", "SKC", "CLR"})
    void clearSkiesTakeTheBaseAway(String group) {
        MetarAir metar = read("METAR XXXX 121220Z 24008KT " + group + " 19/11 Q1016");
        assertThat(metar.air().cloudBaseFt()).isNull();
        assertThat(metar.notes()).anyMatch(n -> n.startsWith(group));
    }

    @Test
    void whatIsMissingIsSaidAndStaysAsItWas() {
        MetarAir metar = read("METAR XXXX 121220Z AUTO /////KT //// // ////// 12/// Q////=");
        assertThat(metar.air()).isEqualTo(new DayAir(1001, 12, 100, 7, 1234.0));
        assertThat(metar.notes())
                .contains(
                        "AUTO: nobody checked it, so cloud may be missing",
                        "The wind is missing in /////KT; it stays as it was",
                        "The pressure is missing in Q////; it stays as it was unless another group gives it",
                        "The amount or height of cloud is missing in //////",
                        "It does not give the cloud, which stays as it was");
        assertThat(read("24008KT BKN/// /////").air().cloudBaseFt()).isEqualTo(1234);
        assertThat(read("24008KT /////").notes()).contains("The temperature is missing in /////; it stays as it was");
    }

    @Test
    void windsHigherUpStay() {
        DayAir aloft = new DayAir(1013, 15, 0, 0, List.of(new WindAt(2000, 300, 25)), null);
        MetarAir metar = Metar.read("24008KT", aloft);
        assertThat(metar.air().windsAloft()).isEqualTo(aloft.windsAloft());
        assertThat(metar.notes()).contains("The winds higher up stay as they were");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24O08KT|24O08KT is not a wind; it must be three digits of direction or VRB",
                "37008KT|37008KT has the direction 370; it must be from 010 to 360, or 00000 for calm",
                "00008KT|00008KT has the direction 000; it must be from 010 to 360",
                "24015KMH|24015KMH is not a wind",
                "240P99MPS|240P99MPS is a wind of 192 kt; it must be from 0 to 100 kt",
                "BKN20|BKN20 is not a cloud group; it must be FEW, SCT, BKN, OVC or VV and three digits",
                "7/5|7/5 is not a temperature and dew point; each must be two digits, with M",
                "-04/-06|-04/-06 is not a temperature and dew point",
                "M75/M80|M75/M80 is -75 °C; it must be from -60 to 60 °C",
                "Q101|Q101 is not a pressure; it must be Q and four digits",
                "Q0750|Q0750 is 750 hPa; it must be from 850 to 1100 hPa",
                "A9292|A9292 is 3147 hPa; it must be from 850 to 1100 hPa",
                "400V100|400V100 is not a range of wind directions; each must be from 000 to 360",
                "METAR XXXX 321220Z 24008KT|321220Z is not a time; it must be day, hour and minute and Z",
                "METAR XXXX 121220Z NIL|NIL means that there is no report",
                "METAR XXXX 24008KT METAR XXXX 25008KT|METAR appears twice; paste one report only",
                "TAF XXXX 24008KT|TAF is a forecast; paste a METAR",
                "good morning|there is no wind, temperature, pressure or cloud to read; paste the whole report",
                "''|there is no wind, temperature, pressure or cloud to read"
            })
    void wrongGroupsGiveOneSentence(String text, String sentence) {
        assertThatIllegalArgumentException().isThrownBy(() -> read(text)).withMessageStartingWith(sentence);
    }

    @Test
    void anyTextGivesAirOrOneSentence() {
        SplittableRandom random = new SplittableRandom(11);
        String signs = "0123456789/MQAVKTBNOCFEWSRG =\n\u0007é";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder("24008KT ");
            int length = random.nextInt(30);
            for (int c = 0; c < length; c++) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            try {
                assertThat(read(text.toString()).read()).isNotEmpty();
            } catch (IllegalArgumentException e) {
                assertThat(e).as("%s", text).isExactlyInstanceOf(IllegalArgumentException.class);
                assertThat(e.getMessage()).as("%s", text).isNotBlank().doesNotContain("\n");
            }
        }
    }

    @Test
    void longTextIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> read("24008KT ".repeat(500)))
                .withMessageStartingWith("the text has 3999 characters");
    }
}
