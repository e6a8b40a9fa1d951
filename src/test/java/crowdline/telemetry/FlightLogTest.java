package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FlightLogTest {
    @Test
    void receiverCaptureIsRead() throws FlightLogException {
        FlightLog log = Logs.read("ublox-neo-m9n-nmea.log");

        assertThat(log.format()).isEqualTo(LogFormat.NMEA);
        assertThat(log.heightKind()).isEqualTo(HeightKind.SEA_LEVEL);
        assertThat(log.fixes()).extracting(Fix::heightM).containsExactly(83.1, 83.0, 83.0);
        assertThat(log.notes()).isEmpty();
    }

    @Test
    void damagedSentencesAreToldWithTheirLines() throws FlightLogException {
        FlightLog log = Logs.text("# capture\n$GPVTG,,,,,,,,,N*31\n"
                + "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\n$GPRMC,,V,,");

        assertThat(log.fixes()).hasSize(1);
        assertThat(Logs.notes(log))
                .containsExactly(
                        "line 2: the checksum is 31, but the text gives 30", "line 4: the sentence is cut short");
    }

    @Test
    void whatIsLeftOutIsCounted() throws FlightLogException {
        String good = "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\n";
        String later = Nmea.sentence("GPGGA,123520,4807.038,N,01131.000,E,0,08,0.9,545.4,M,46.9,M,,");
        String last = Nmea.sentence("GPGGA,123521,4807.038,N,01131.000,E,0,08,0.9,545.4,M,46.9,M,,");
        assertThat(Logs.notes(Logs.text(good + later))).containsExactly("1 instant without a position left out");
        assertThat(Logs.notes(Logs.text(good + later + last)))
                .containsExactly("2 instants without a position left out");
    }

    /** Some editors put a mark ahead of a text in UTF-8, whatever the text is. */
    @ParameterizedTest
    @ValueSource(strings = {"20241007TZN.igc", "ublox-neo-m9n-nmea.log", "track-with-less-sec-time.gpx"})
    void theMarkOfUtf8IsNoPartOfALog(String name) throws FlightLogException {
        byte[] plain = Logs.bytes(name);
        byte[] marked = new byte[plain.length + 3];
        marked[0] = (byte) 0xEF;
        marked[1] = (byte) 0xBB;
        marked[2] = (byte) 0xBF;
        System.arraycopy(plain, 0, marked, 3, plain.length);

        assertThat(FlightLog.read(marked, name, IgcHeight.GNSS)).isEqualTo(FlightLog.read(plain, name, IgcHeight.GNSS));
    }

    @Test
    void binaryOnlyCaptureIsRefused() {
        assertThat(Logs.refusal(Logs.bytes("sirfstarv.log"), "a.log", IgcHeight.GNSS))
                .isEqualTo("a.log is not a flight log this program can read; export it as NMEA 0183, IGC or GPX");
    }

    @Test
    void captureWithoutHeightsIsRefused() {
        byte[] bytes = Nmea.bytes("$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A\n");

        assertThat(Logs.refusal(bytes, "a.log", IgcHeight.GNSS))
                .isEqualTo(
                        "a.log holds 1 good NMEA sentences and 0 damaged ones, but no position with a time and a height; set the receiver to send GGA and RMC");
    }

    /** A receiver before it has the time; its position alone tells nobody when the aircraft was there. */
    @Test
    void captureWithoutTimesIsRefused() {
        byte[] bytes = Nmea.bytes(Nmea.sentence("GPGGA,,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,"));

        assertThat(Logs.refusal(bytes, "a.log", IgcHeight.GNSS)).contains("no position with a time and a height");
    }

    @Test
    void onePositionTooManyIsRefusedWithTheCount() {
        StringBuilder days = new StringBuilder("AXXX001\r\nHFDTE271126\r\n");
        for (int i = 0; i < 200_001; i++) {
            int s = i % 86_400;
            String clock = String.valueOf(1_000_000 + s / 3600 * 10_000 + s / 60 % 60 * 100 + s % 60);
            days.append('B').append(clock, 1, 7).append("5212345N00012345EA0030000300\r\n");
        }
        assertThat(Logs.refusal(days.toString().getBytes(StandardCharsets.US_ASCII), "days.igc", IgcHeight.GNSS))
                .isEqualTo(
                        "days.igc holds 200,001 positions; a flight log has at most 200,000, so cut it to the flight");
    }

    @Test
    void emptyAndHugeFilesAreRefused() {
        assertThat(Logs.refusal(new byte[0], "a", IgcHeight.GNSS)).startsWith("a is empty");
        assertThat(Logs.refusal(new byte[FlightLog.LARGEST + 1], "a", IgcHeight.GNSS))
                .isEqualTo("a has 24 MB; a flight log has at most 24 MB, so cut it to the flight");
    }

    /** Seeded damage: whatever the bytes, a log is read in order of time or refused in one sentence. */
    @ParameterizedTest
    @MethodSource("files")
    void damagedLogIsReadOrRefusedAndNothingElse(String name) {
        byte[] whole = Logs.bytes(name);
        int read = 0;
        for (int seed = 0; seed < 150; seed++) {
            Random random = new Random(seed);
            byte[] damaged = Damage.some(whole, random, 1 + seed / 3);
            try {
                FlightLog log = FlightLog.read(damaged, name, seed % 2 == 0 ? IgcHeight.GNSS : IgcHeight.PRESSURE);
                read++;
                assertThat(timesOf(log))
                        .as("%s, seed %d", name, seed)
                        .isSorted()
                        .doesNotHaveDuplicates();
            } catch (FlightLogException e) {
                assertThat(e.getMessage())
                        .as("seed %d", seed)
                        .startsWith(name)
                        .contains("; ")
                        .doesNotContain("\n");
            }
        }
        boolean readable = !name.equals("sirfstarv.log") && !name.equals("unicode_with_bom.gpx");
        assertThat(read > 0).isEqualTo(readable);
    }

    static List<String> files() {
        return Logs.ALL;
    }

    private static List<Double> timesOf(FlightLog log) {
        List<Double> times = new ArrayList<>();
        log.fixes().forEach(fix -> times.add(fix.tS()));
        return times;
    }
}
