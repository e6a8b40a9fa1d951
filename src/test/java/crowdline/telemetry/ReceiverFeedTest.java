package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReceiverFeedTest {
    /** From the test data of gpsd, {@code ublox-neo-m9n-nmea.log}. */
    private static final String FIRST = """
            $GNRMC,223745.00,A,3806.62964,N,12237.61382,W,0.040,,110720,,,D,V*0E
            $GNVTG,,T,,M,0.040,N,0.075,K,D*3E
            $GNGGA,223745.00,3806.62964,N,12237.61382,W,2,12,0.54,83.1,M,-29.5,M,,0000*44
            """;

    private static final String TEXTBOOK = """
            $GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47
            $GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A
            """;

    /** What gpsd makes of these sentences: its {@code ublox-neo-m9n-nmea.log.chk}, first report of all three. */
    @Test
    void fixAgreesWithAnotherDecoder() {
        Fix fix = only(FIRST);

        assertThat(fix.utc()).isEqualTo(Instant.parse("2020-07-11T22:37:45.000Z"));
        assertThat(fix.latDeg()).isCloseTo(38.110494000, within(5e-10));
        assertThat(fix.lonDeg()).isCloseTo(-122.626897000, within(5e-10));
        assertThat(fix.heightM()).isEqualTo(83.1);
        assertThat(fix.heightKind()).isEqualTo(HeightKind.SEA_LEVEL);
        assertThat(fix.speedMps()).isCloseTo(0.021, within(0.0005));
        assertThat(fix.trackDeg()).isNull();
        assertThat(fix.quality()).isEqualTo(FixQuality.DIFFERENTIAL);
    }

    @Test
    void orderOfSentencesDoesNotMatter() {
        List<String> lines = new ArrayList<>(TEXTBOOK.lines().toList());
        Fix forward = only(String.join("\n", lines));
        Collections.reverse(lines);

        assertThat(only(String.join("\n", lines))).isEqualTo(forward);
        assertThat(forward.trackDeg()).isEqualTo(84.4);
        assertThat(forward.utc()).isEqualTo(Instant.parse("1994-03-23T12:35:19Z"));
    }

    @Test
    void splitAtAnyPlaceGivesTheSame() {
        byte[] stream = mixedStream();
        List<Fix> whole = feed(stream, stream.length);
        assertThat(whole).hasSize(2);

        for (int split = 0; split <= stream.length; split++) {
            assertThat(feed(stream, split)).as("split at %d", split).isEqualTo(whole);
        }
    }

    @Test
    void byteByByteGivesTheSame() {
        byte[] stream = mixedStream();
        ReceiverFeed feed = new ReceiverFeed();
        List<Fix> fixes = new ArrayList<>();
        for (byte b : stream) {
            fixes.addAll(feed.accept(new byte[] {b}, 1));
        }

        assertThat(fixes).isEqualTo(feed(stream, stream.length));
    }

    @Test
    void fixIsGivenWithItsLastSentence() {
        ReceiverFeed feed = new ReceiverFeed();
        byte[] stream = Nmea.bytes(TEXTBOOK.stripTrailing());

        assertThat(feed.accept(stream, stream.length - 1)).isEmpty();
        assertThat(feed.accept(Arrays.copyOfRange(stream, stream.length - 1, stream.length), 1))
                .hasSize(1);
    }

    @Test
    void receiverWithoutRmcIsNotKeptWaitingForIt() {
        ReceiverFeed feed = new ReceiverFeed();
        int given = 0;
        for (int s = 0; s < 20; s++) {
            given += feed.accept(gga(s), gga(s).length).size();
        }

        assertThat(given).isEqualTo(20);
    }

    @Test
    void speedComesFromVtgWhereThereIsNoRmc() {
        ReceiverFeed feed = new ReceiverFeed();
        List<Fix> fixes = new ArrayList<>();
        for (int s = 0; s < 20; s++) {
            byte[] vtg = Nmea.bytes(Nmea.sentence("GPVTG,90," + "T,,M," + (10 + s) + ",N,,K,A"));
            fixes.addAll(feed.accept(gga(s), gga(s).length));
            fixes.addAll(feed.accept(vtg, vtg.length));
        }

        assertThat(fixes).hasSize(20);
        assertThat(fixes.get(19).speedMps()).isCloseTo(29 * 1852 / 3600.0, within(1e-9));
        assertThat(fixes.get(19).utc()).isNull();
    }

    @Test
    void sentencesOfDifferentInstantsAreNotJoined() {
        String rmcOfAnother = "$GPRMC,,V,,,,,,,,,,N*53\n"
                + Nmea.sentence("GPRMC,123520,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W");
        Fix fix = only(TEXTBOOK.lines().findFirst().orElseThrow() + "\n" + rmcOfAnother);

        assertThat(fix.speedMps()).isNull();
        assertThat(fix.utc()).isNull();
    }

    @Test
    void positionThatTheReceiverDoesNotStandByIsNotGiven() {
        String void1 = TEXTBOOK.lines().findFirst().orElseThrow()
                + Nmea.sentence("GPRMC,123519,V,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W,N");
        ReceiverFeed feed = new ReceiverFeed();
        byte[] bytes = Nmea.bytes(void1);

        assertThat(feed.accept(bytes, bytes.length)).isEmpty();
        assertThat(feed.counts().withoutFix()).isEqualTo(1);
    }

    @Test
    void guessedPositionIsNotGiven() {
        String guess = Nmea.sentence("GPGGA,123519,4807.038,N,01131.000,E,6,08,0.9,545.4,M,46.9,M,,")
                + Nmea.sentence("GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W,E");
        ReceiverFeed feed = new ReceiverFeed();
        byte[] bytes = Nmea.bytes(guess);

        assertThat(feed.accept(bytes, bytes.length)).isEmpty();
        assertThat(feed.counts().guessed()).isEqualTo(1);
    }

    @Test
    void receiverThatSendsNoHeightIsCounted() {
        ReceiverFeed feed = new ReceiverFeed();
        byte[] bytes = Nmea.bytes(TEXTBOOK.lines().skip(1).findFirst().orElseThrow());
        feed.accept(bytes, bytes.length);

        assertThat(feed.finish()).isEmpty();
        assertThat(feed.counts().withoutHeight()).isEqualTo(1);
    }

    @Test
    void scaleGoesForwardAcrossMidnight() {
        List<Fix> fixes = new ArrayList<>();
        ReceiverFeed feed = new ReceiverFeed();
        for (String pair :
                List.of(pair("235958.5", "311224"), pair("235959.5", "311224"), pair("000000.5", "010125"))) {
            fixes.addAll(feed.accept(Nmea.bytes(pair), pair.length()));
        }

        assertThat(fixes).hasSize(3);
        assertThat(fixes.get(1).tS() - fixes.get(0).tS()).isCloseTo(1, within(1e-6));
        assertThat(fixes.get(2).tS() - fixes.get(1).tS()).isCloseTo(1, within(1e-6));
        assertThat(fixes.get(2).utc()).isEqualTo(Instant.parse("2025-01-01T00:00:00.5Z"));
    }

    /** Bytes flipped, dropped and added: nothing is thrown, and no damaged sentence passes for a far place. */
    @Test
    void damageNeverThrowsAndNeverMovesTheAircraft() {
        Random random = new Random(20260101);
        StringBuilder clean = new StringBuilder();
        for (int s = 10; s < 40; s++) {
            clean.append(pair("1235" + s, "230394"));
        }
        for (int round = 0; round < 300; round++) {
            byte[] damaged = Damage.some(Nmea.bytes(clean.toString()), random, 20);
            ReceiverFeed feed = new ReceiverFeed();
            List<Fix> fixes = new ArrayList<>(feed.accept(damaged, damaged.length));
            fixes.addAll(feed.finish());

            assertThat(fixes).as("round %d", round).isNotEmpty().allSatisfy(fix -> {
                assertThat(fix.latDeg()).isCloseTo(48.1173, within(1e-4));
                assertThat(fix.heightM()).isEqualTo(545.4);
            });
        }
    }

    private static String pair(String time, String date) {
        return Nmea.sentence("GPGGA," + time + ",4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,") + "\r\n"
                + Nmea.sentence("GPRMC," + time + ",A,4807.038,N,01131.000,E,022.4,084.4," + date + ",003.1,W")
                + "\r\n";
    }

    private static byte[] gga(int second) {
        return Nmea.bytes(Nmea.sentence(
                String.format(Locale.ROOT, "GPGGA,1235%02d,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,", second)));
    }

    private static byte[] mixedStream() {
        byte[] ubx = {(byte) 0xB5, 0x62, 0x01, 0x07, 4, 0, '$', 'G', 'P', '\n', 0x12, (byte) 0xFE};
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(ubx);
        all.writeBytes(Nmea.bytes(TEXTBOOK));
        all.writeBytes(ubx);
        all.writeBytes(Nmea.bytes(FIRST.replace("\n", "\r\n")));
        return all.toByteArray();
    }

    private static Fix only(String text) {
        List<Fix> fixes = feed(Nmea.bytes(text), 0);
        assertThat(fixes).hasSize(1);
        return fixes.get(0);
    }

    private static List<Fix> feed(byte[] bytes, int split) {
        ReceiverFeed feed = new ReceiverFeed();
        List<Fix> fixes = new ArrayList<>(feed.accept(bytes, split));
        byte[] rest = Arrays.copyOfRange(bytes, split, bytes.length);
        fixes.addAll(feed.accept(rest, rest.length));
        fixes.addAll(feed.finish());
        return fixes;
    }
}
