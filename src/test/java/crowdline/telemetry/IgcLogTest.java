package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the IGC's technical specification for GNSS flight recorders, appendix A, and recorders' own files. */
class IgcLogTest {
    private static final Offset<Double> DEG = within(5e-10);
    private static final String HEAD = "AXXXABC\r\nHFDTE160701\r\n";

    /** B records of the specification, §A4.1.3 and §A9.2, with its I record {@code I043638FXA3940SIU4143ENL4446MOP}. */
    @ParameterizedTest
    @CsvSource({
        "B1101355206343N00006198WA0058700558, 11:01:35, 52.105716667, -0.103300, 587, 558, '', '', ''",
        "B1602455107126N00149300WA002880042905009970, 16:02:45, 51.118766667, -1.821666667, 288, 429, 050, 09, 970",
        "B1602505107134N00149283WA002900043204509980, 16:02:50, 51.118900, -1.821383333, 290, 432, 045, 09, 980",
        "B1603005107150N00149202WA002910043202608022, 16:03:00, 51.119166667, -1.820033333, 291, 432, 026, 08, 022"
    })
    void recordsOfTheSpecificationAreRead(
            String record,
            LocalTime time,
            double latDeg,
            double lonDeg,
            int pressureM,
            int gnssM,
            String fxa,
            String siu,
            String enl) {
        IgcExtensions extensions = extensions("I033638FXA3940SIU4143ENL");
        IgcPosition position = position(record, extensions);

        assertThat(position.time()).isEqualTo(time);
        assertThat(position.latDeg()).isCloseTo(latDeg, DEG);
        assertThat(position.lonDeg()).isCloseTo(lonDeg, DEG);
        assertThat(position.valid()).isTrue();
        assertThat(position.pressureM()).isEqualTo(pressureM);
        assertThat(position.gnssM()).isEqualTo(gnssM);
        assertThat(extensions.digits(record, "FXA")).isEqualTo(fxa);
        assertThat(extensions.digits(record, "SIU")).isEqualTo(siu);
        assertThat(extensions.digits(record, "ENL")).isEqualTo(enl);
    }

    /** 24.771 m, 053.214°, 17.84 km/h between the two: by GeographicLib-Java 2.1. */
    @Test
    void wayBetweenTwoRecordsOfTheSpecificationIsTheGeodesic() {
        IgcPosition from = position("B1602455107126N00149300WA002880042905009970", IgcExtensions.NONE);
        IgcPosition to = position("B1602505107134N00149283WA002900043204509980", IgcExtensions.NONE);
        GeodesicData way =
                Geodesic.WGS84.Inverse(from.latDeg(), from.lonDeg(), to.latDeg(), to.lonDeg(), GeodesicMask.STANDARD);

        assertThat(way.s12).isCloseTo(24.771, within(0.0005));
        assertThat(way.azi1).isCloseTo(53.214, within(0.0005));
        long seconds = Duration.between(from.time(), to.time()).toSeconds();
        assertThat(way.s12 / seconds * 3.6).isCloseTo(17.84, within(0.005));
    }

    /** The specification's own example has a stray space and wrong degrees in its first line (§A9.2). */
    @Test
    void misprintOfTheSpecificationIsLeftOutWithItsLine() throws FlightLogException {
        FlightLog log = Logs.text(HEAD + "B1602405407121N 0 0249342WA002800042105009950\r\n"
                + "B1602455107126N00149300WA002880042905009970\r\n");

        assertThat(log.fixes()).hasSize(1);
        assertThat(Logs.notes(log)).containsExactly("line 3: the position (B record) cannot be read and was left out");
    }

    @ParameterizedTest
    @CsvSource({"HFDTE160701, 2001-07-16", "HFDTEDATE:160819;02, 2019-08-16", "HFDTEDATE: 030418, 2018-04-03"})
    void bothFormsOfTheDateAreRead(String header, String day) throws FlightLogException {
        FlightLog log = Logs.text("AXXXABC\n" + header.replace(';', ',') + "\nB1101355206343N00006198WA0058700558\n");

        assertThat(log.fixes().get(0).utc()).isEqualTo(Instant.parse(day + "T11:01:35Z"));
        assertThat(log.notes()).isEmpty();
    }

    @Test
    void impossibleDateLeavesTheTimesOfDay() throws FlightLogException {
        FlightLog log = Logs.text("AXXXABC\nHFDTE310299\nB1101355206343N00006198WA0058700558\n");

        assertThat(log.fixes().get(0).utc()).isNull();
        assertThat(Logs.notes(log))
                .containsExactly(
                        "line 2: the date must be a real date as ddmmyy; left out",
                        "no date (HFDTE) that can be read; the times of day are kept");
    }

    @Test
    void midnightTurnsTheDateAndTheScaleGoesOn() throws FlightLogException {
        FlightLog log = Logs.text("""
                AXXXABC
                HFDTE311224
                B2359585206343N00006198WA0058700558
                B0000025206343N00006198WA0058700558
                """);

        assertThat(log.fixes().get(1).utc()).isEqualTo(Instant.parse("2025-01-01T00:00:02Z"));
        assertThat(log.fixes().get(1).tS() - log.fixes().get(0).tS()).isCloseTo(4, within(1e-6));
    }

    @Test
    void decimalSecondsAreRead() throws FlightLogException {
        FlightLog log = Logs.text(HEAD + "I013637TDS\nB1101355206343N00006198WA005870055825\n"
                + "B1101355206343N00006198WA005870055850\n");

        assertThat(log.fixes().get(0).utc()).isEqualTo(Instant.parse("2001-07-16T11:01:35.25Z"));
        assertThat(log.fixes().get(1).tS() - log.fixes().get(0).tS()).isCloseTo(0.25, within(1e-6));
    }

    /** First record B1646594458082N00549988EA000000171983: 44°58.0828′ N, 5°49.9883′ E. */
    @Test
    void moreDigitsOfPlaceAreRead() throws FlightLogException {
        FlightLog log = Logs.read("lad_lod_extensions.igc");
        Fix first = log.fixes().get(0);

        assertThat(log.format()).isEqualTo(LogFormat.IGC);
        assertThat(first.latDeg()).isCloseTo(44 + 58.0828 / 60, within(1e-9));
        assertThat(first.lonDeg()).isCloseTo(5 + 49.9883 / 60, within(1e-9));
        assertThat(first.utc()).isEqualTo(Instant.parse("2023-02-20T16:46:59Z"));
        assertThat(first.heightM()).isEqualTo(1719);
    }

    @Test
    void recorderSaysWhatItsHeightsAreAbove() throws FlightLogException {
        assertThat(Logs.read("lad_lod_extensions.igc").heightKind()).isEqualTo(HeightKind.SEA_LEVEL); // HFALG:GEO
        assertThat(Logs.read("new_date_format.igc").heightKind()).isEqualTo(HeightKind.ELLIPSOID);
    }

    @Test
    void fileWithoutThatHeightIsRefused() {
        assertThat(Logs.refusal(Logs.bytes("lad_lod_extensions.igc"), "a.igc", IgcHeight.PRESSURE))
                .isEqualTo("a.igc has no pressure heights, they are all 00000; read it with its GNSS heights");
    }

    @Test
    void eitherHeightIsReadAsChosen() throws FlightLogException {
        byte[] bytes = Logs.bytes("new_date_format.igc");
        FlightLog pressure = FlightLog.read(bytes, "x", IgcHeight.PRESSURE);

        assertThat(pressure.heightKind()).isEqualTo(HeightKind.PRESSURE);
        assertThat(pressure.fixes().get(0).heightM()).isEqualTo(988);
        assertThat(Logs.read("new_date_format.igc").fixes().get(0).heightM()).isEqualTo(1046);
        assertThat(pressure.fixes().get(0).utc()).isEqualTo(Instant.parse("2018-04-03T12:00:00Z"));
    }

    @Test
    void heightBelowZeroIsRead() {
        IgcPosition position = position("B0849533632742N02907404EA-0049-000516-002011", IgcExtensions.NONE);

        assertThat(position.pressureM()).isEqualTo(-49);
        assertThat(position.gnssM()).isEqualTo(-5);
    }

    @Test
    void positionsWithoutFullFixAreLeftOutInOneNote() throws FlightLogException {
        FlightLog log = Logs.text(HEAD + "B1101355206343N00006198WA0058700558\nB1101365206343N00006198WV0058700000\n"
                + "B1101375206343N00006198WV0058700000\nB1101385206343N00006198WA0058700000\n");

        assertThat(log.fixes()).hasSize(1);
        assertThat(Logs.notes(log))
                .containsExactly(
                        "lines 4 to 5: the recorder had no full fix (validity V); left out",
                        "line 6: no GNSS height (00000); left out");
    }

    @Test
    void timeThatStandsStillIsLeftOut() throws FlightLogException {
        FlightLog log = Logs.read("no_time_increment.igc");

        assertThat(log.fixes()).hasSize(13);
        assertThat(Logs.notes(log))
                .containsExactly("lines 16 to 33: the time does not lie after the one before; left out");
    }

    /** A recorder's pressure fell by 125 m for a second; sound would go 340 m, so that alone is no fault of its own. */
    @Test
    void impossibleJumpsAreKeptAndToldOf() throws FlightLogException {
        FlightLog log = Logs.text(HEAD + "B1101355206343N00006198WA0058700558\nB1101365206343N00006198WA0058728770\n"
                + "B1101375206343N00006198WA0058700558\n");

        assertThat(log.fixes()).hasSize(3);
        assertThat(Logs.notes(log))
                .containsExactly(
                        "2 positions lie further from the one before than sound travels meanwhile, the first at"
                                + " 2001-07-16T11:01:36Z; they are kept, though the recorder was probably wrong");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "B2460005206343N00006198WA0058700558",
                "B1101605206343N00006198WA0058700558",
                "B1101359006343N00006198WA0058700558",
                "B1101355260000N00006198WA0058700558",
                "B1101355206343N18006198WA0058700558",
                "B1101355206343X00006198WA0058700558",
                "B1101355206343N00006198WB0058700558",
                "B1101355206343N00006198WA00587",
                "B"
            })
    void impossibleRecordsAreLeftOut(String record) {
        assertThat(IgcPosition.read(record, IgcExtensions.NONE)).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"I", "I01", "I023638FXA", "I013635FXA", "I013836FXA", "Ixx3638FXA"})
    void impossibleListsOfAdditionsAreRefused(String record) {
        assertThat(IgcExtensions.read(record)).isNull();
    }

    @Test
    void recordsAreReadWithAnyLineEnd() throws FlightLogException {
        for (String lineEnd : List.of("\r\n", "\n", "\r")) {
            FlightLog log = Logs.text(
                    String.join(lineEnd, "AXXXABC", "HFDTE160701", "?", "B1101355206343N00006198WA0058700558", ""));

            assertThat(log.fixes()).hasSize(1);
            assertThat(Logs.notes(log)).containsExactly("line 3: the line does not begin like an IGC record; left out");
        }
    }

    private static IgcPosition position(String record, IgcExtensions extensions) {
        return Objects.requireNonNull(IgcPosition.read(record, extensions));
    }

    private static IgcExtensions extensions(String record) {
        return Objects.requireNonNull(IgcExtensions.read(record));
    }
}
