package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sentences and what they mean, from {@code www/NMEA.adoc} and {@code test/daemon} of gpsd, from the University of
 * Hohenheim's page of NMEA strings, and from a NOAA cruise (PISTON 2019). Where a value is only from memory it says so.
 */
class NmeaDecoderTest {
    private static final Offset<Double> DEG = within(1e-8);
    private static final double KNOT_MPS = 0.514444444;

    @Test
    void ggaOfTheTextbookIsRead() {
        Sentence.Gga gga = gga("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47");

        assertThat(gga.utc()).isEqualTo(LocalTime.of(12, 35, 19));
        assertPlace(gga.place(), 48.11730000, 11.51666667);
        assertThat(gga.heightM()).isEqualTo(545.4);
        assertThat(gga.geoidM()).isEqualTo(46.9);
        assertThat(gga.quality()).isEqualTo(FixQuality.SATELLITE);
    }

    /** The sentence is from memory; its checksum agrees. */
    @Test
    void rmcOfTheTextbookIsRead() {
        Sentence.Rmc rmc = rmc("$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A");

        assertThat(rmc.utc()).isEqualTo(LocalTime.of(12, 35, 19));
        assertThat(rmc.date()).isEqualTo(LocalDate.of(1994, 3, 23));
        assertThat(rmc.valid()).isTrue();
        assertPlace(rmc.place(), 48.1173, 11.51666667);
        assertThat(rmc.speedMps()).isCloseTo(22.4 * KNOT_MPS, within(1e-6));
        assertThat(rmc.trackDeg()).isEqualTo(84.4);
    }

    /** The sentence is from memory; its checksum agrees. */
    @Test
    void vtgOfTheTextbookIsRead() {
        Sentence.Vtg vtg = (Sentence.Vtg) Nmea.decode("$GPVTG,054.7,T,034.4,M,005.5,N,010.2,K*48");

        assertThat(vtg.trackDeg()).isEqualTo(54.7);
        assertThat(vtg.speedMps()).isCloseTo(10.2 / 3.6, within(0.01));
    }

    @Test
    void emptyTrackIsUnknown() {
        Sentence.Rmc rmc = rmc("$GNRMC,001031.00,A,4404.13993,N,12118.86023,W,0.146,,100117,,,A*7B");

        assertThat(rmc.trackDeg()).isNull();
        assertThat(rmc.speedMps()).isCloseTo(0.146 * KNOT_MPS, within(1e-6));
        assertPlace(rmc.place(), 44.0689988333, -121.3143371667);
    }

    @Test
    void emptyMagneticTrackDoesNotMatter() {
        Sentence.Vtg vtg = (Sentence.Vtg) Nmea.decode("$GPVTG,220.86,T,,M,2.550,N,4.724,K,A*34");

        assertThat(vtg.trackDeg()).isEqualTo(220.86);
        assertThat(vtg.speedMps()).isCloseTo(4.724 / 3.6, within(0.001));
    }

    @Test
    void navigationStatusOfLaterVersionsIsAllowed() {
        Sentence.Rmc rmc = rmc("$GNRMC,120213.000,A,5957.0062,N,01100.6429,E,0.00,0.00,310722,,,D,V*0A");

        assertThat(rmc.date()).isEqualTo(LocalDate.of(2022, 7, 31));
        assertThat(rmc.valid()).isTrue();
        assertThat(rmc.guessed()).isFalse();
    }

    @Test
    void heightBelowTheSeaIsRead() {
        Sentence.Gga gga = gga("$GPGGA,213950.00,5250.53669,N,00542.34920,E,1,09,1.03,-6.0,M,45.8,M,,*7B");

        assertThat(gga.heightM()).isEqualTo(-6.0);
    }

    @Test
    void receiverWithoutFixSaysSo() {
        assertThat(rmc("$GPRMC,,V,,,,,,,,,,N*53").valid()).isFalse();
        assertThat(Nmea.decode("$GPVTG,,,,,,,,,N*30")).isEqualTo(new Sentence.Vtg(null, null));
    }

    @Test
    void ggaAndRmcOfOneInstantAgree() {
        Sentence.Gga gga = gga("$GPGGA,195959.00,1813.38282955,N,12606.12767097,E,2,07,1.4,17.2,M,36.5,M,4.0,0129*78");
        Sentence.Rmc rmc = rmc("$GPRMC,195959.00,A,1813.38282955,N,12606.12767097,E,1.31,262.13,160919,3.0,W,D*21");

        assertPlace(gga.place(), 18.22304716, 126.10212785);
        assertThat(rmc.place()).isEqualTo(gga.place());
        assertThat(rmc.utc()).isEqualTo(gga.utc());
        assertThat(gga.quality()).isEqualTo(FixQuality.DIFFERENTIAL);
    }

    /** 4533.35 is 45°33′21″ and 16708.033 is 167°8′2″: the examples of {@code NMEA.adoc}. */
    @Test
    void minutesAreSixtiethsOfDegrees() {
        Sentence.Gga gga = gga(Nmea.sentence("GPGGA,000000,4533.35,N,16708.033,E,1,08,0.9,0,M,0,M,,"));

        assertPlace(gga.place(), 45 + 33 / 60.0 + 21 / 3600.0, 167 + 8 / 60.0 + 1.98 / 3600);
    }

    @Test
    void impossibleDateIsRefusedThoughTheChecksumIsGood() {
        assertThat(refusal("$GPRMC,000231.099,A,4829.0005,N,00022.0015,E,0.15,212.28,2208-1,,,A*73"))
                .isEqualTo("GPRMC: date is \"2208-1\"; it must be a date as ddmmyy");
    }

    @Test
    void damagedSentenceIsRefusedByItsChecksum() {
        assertThat(refusal("$GPRMC,091915.000,A,5133.41632,N,00150.33776,W,0.829,129.12,100216,,,A*64"))
                .isEqualTo("the checksum is 64, but the text gives 43");
    }

    /** The example of {@code NMEA.adoc} lacks two fields, and two commas fewer leave the checksum as it was. */
    @Test
    void droppedCommasAreRefusedThoughTheChecksumIsGood() {
        String lacking = "$GNGGA,001043.00,4404.14036,N,12118.85961,W,1,12,0.98,1113.0,M,-21.3,M*47";
        String whole = "$GNGGA,001043.00,4404.14036,N,12118.85961,W,1,12,0.98,1113.0,M,-21.3,M,,*47";

        assertThat(refusal(lacking)).isEqualTo("GNGGA: 12 fields; it has 14");
        assertThat(gga(whole).heightM()).isEqualTo(1113.0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GPGGA,246060,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,12351,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,123519,4860.000,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,123519,9000.001,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,123519,4807.038,N,18000.001,E,1,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,123519,4807.038,N,1131.000,E,1,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,123519,4807.038,,01131.000,E,1,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,123519,4807.038,N,,E,1,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,123519,-807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,123519,4807.038,N,01131.000,E,9,08,0.9,545.4,M,46.9,M,,",
                "GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,1e3,M,46.9,M,,",
                "GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,NaN,M,46.9,M,,",
                "GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,F,46.9,M,,",
                "GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,200000,M,46.9,M,,",
                "GPRMC,123519,A,4807.038,N,01131.000,E,-22.4,084.4,230394,003.1,W",
                "GPRMC,123519,A,4807.038,N,01131.000,E,022.4,360.1,230394,003.1,W",
                "GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,310294,003.1,W",
                "GPRMC,123519,X,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W",
                "GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394",
                "GPVTG,054.7,T,034.4,M,005.5,K,010.2,N",
                "GPVTG,054.7,T"
            })
    void impossibleFieldsAreRefused(String body) {
        assertThat(refusal(Nmea.sentence(body))).startsWith(body.substring(0, 5) + ": ");
    }

    @ParameterizedTest
    @CsvSource({"GP", "GN", "GL", "GA", "GB", "BD", "GQ", "QZ", "II"})
    void anyTalkerWillDo(String talker) {
        assertThat(Nmea.decode(Nmea.sentence(talker + "VTG,1,T,,M,2,N,,K"))).isInstanceOf(Sentence.Vtg.class);
    }

    @Test
    void otherSentencesAreGoodButSayNothing() {
        assertThat(Nmea.decode("$GNGSA,A,3,29,20,18,16,51,13,44,26,,,,,0.99,0.54,0.83,1*0E"))
                .isEqualTo(new Sentence.Other("GNGSA"));
        assertThat(Nmea.decode(Nmea.sentence("PXYZ1,1,2"))).isEqualTo(new Sentence.Other("PXYZ1"));
    }

    @Test
    void sentenceWithoutChecksumIsRefused() {
        assertThat(refusal("$GPVTG,054.7,T,034.4,M,005.5,N,010.2,K")).isEqualTo("the sentence has no checksum");
    }

    private static void assertPlace(Sentence.@Nullable Place place, double latDeg, double lonDeg) {
        assertThat(place).isNotNull();
        assertThat(place.latDeg()).isCloseTo(latDeg, DEG);
        assertThat(place.lonDeg()).isCloseTo(lonDeg, DEG);
    }

    private static Sentence.Gga gga(String sentence) {
        return (Sentence.Gga) Nmea.decode(sentence);
    }

    private static Sentence.Rmc rmc(String sentence) {
        return (Sentence.Rmc) Nmea.decode(sentence);
    }

    private static String refusal(String sentence) {
        Sentence decoded = Nmea.decode(sentence);
        assertThat(decoded).isInstanceOf(Sentence.Refused.class);
        return ((Sentence.Refused) decoded).reason();
    }

    /** Two digits of year: no receiver told a date before 1980, when the time of the satellites begins (IS-GPS-200, 3.3.4). */
    @ParameterizedTest
    @CsvSource({
        "060180, 1980-01-06",
        "311299, 1999-12-31",
        "010100, 2000-01-01",
        "290224, 2024-02-29",
        "311279, 2079-12-31"
    })
    void yearsOfTwoDigitsAreOfTheTimeThatReceiversKnow(String field, String date) {
        assertThat(rmc(Nmea.sentence("GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4," + field + ",003.1,W"))
                        .date())
                .isEqualTo(LocalDate.parse(date));
    }
}
