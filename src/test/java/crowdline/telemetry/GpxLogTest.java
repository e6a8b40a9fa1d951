package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GpxLogTest {
    private static final String HEAD = """
            <?xml version="1.0" encoding="UTF-8"?>
            <gpx version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1">
            """;

    @Test
    void trackIsReadAndAnEmptySegmentDoesNoHarm() throws FlightLogException {
        FlightLog log = Logs.read("track-with-empty-segment.gpx");

        assertThat(log.format()).isEqualTo(LogFormat.GPX);
        assertThat(log.heightKind()).isEqualTo(HeightKind.UNSTATED);
        assertThat(log.fixes()).hasSize(9);
        assertThat(log.notes()).isEmpty();
        Fix last = log.fixes().get(8);
        assertThat(last.latDeg()).isEqualTo(50.7776715);
        assertThat(last.lonDeg()).isEqualTo(6.0827203);
        assertThat(last.heightM()).isEqualTo(191.5999756);
        assertThat(last.utc()).isEqualTo(Instant.parse("2013-07-06T17:27:42Z"));
        assertThat(last.tS() - log.fixes().get(0).tS()).isEqualTo(76);
        assertThat(last.speedMps()).isNull();
    }

    @Test
    void fractionsOfSecondsAndOtherZonesAreRead() throws FlightLogException {
        FlightLog log = Logs.read("track-with-less-sec-time.gpx");

        assertThat(log.fixes().get(0).utc()).isEqualTo(Instant.parse("2015-12-11T14:43:13Z"));
        assertThat(log.fixes().get(1).tS() - log.fixes().get(0).tS()).isCloseTo(0.994, within(1e-9));
    }

    /**
     * Forms of {@code xsd:dateTime} (W3C, XML Schema Part 2, 3.2.7), the type of {@code time} in the schema of GPX 1.1
     * (topografix.com/GPX/1/1), whose documentation says "Date and time in are in Univeral Coordinated Time (UTC), not local
     * time! Conforms to ISO 8601 specification for date/time representation."
     */
    @ParameterizedTest
    @CsvSource({
        "2026-07-18T14:00:00Z, 2026-07-18T14:00:00Z",
        "2026-07-18T16:00:00+02:00, 2026-07-18T14:00:00Z",
        "2026-07-18T09:30:00-04:30, 2026-07-18T14:00:00Z",
        "2026-07-19T01:00:00+11:00, 2026-07-18T14:00:00Z",
        "2026-07-18T14:00:00.25Z, 2026-07-18T14:00:00.25Z",
        "2026-07-18T14:00:00, 2026-07-18T14:00:00Z",
        "' 2026-07-18T14:00:00Z ', 2026-07-18T14:00:00Z",
    })
    void timesAreReadInEveryZone(String written, String utc) throws FlightLogException {
        FlightLog log = Logs.text(HEAD + "<trk><trkseg><trkpt lat='1' lon='2'><ele>3</ele><time>" + written
                + "</time></trkpt></trkseg></trk></gpx>");

        assertThat(log.fixes().get(0).utc()).isEqualTo(Instant.parse(utc));
        assertThat(log.notes()).isEmpty();
    }

    @Test
    void pointsWithoutTimeAreLeftOutWithTheirLines() throws FlightLogException {
        FlightLog log = Logs.read("track-partly-without-times.gpx");

        assertThat(log.fixes()).hasSize(5);
        assertThat(log.fixes().get(0).utc()).isEqualTo(Instant.parse("2010-08-05T16:22:52Z"));
        assertThat(Logs.notes(log)).contains("line 12: the track point has no time that can be read and was left out");
    }

    @Test
    void trackWithoutAnyTimeIsRefused() {
        String text = HEAD + "<trk><trkseg><trkpt lat='1' lon='2'><ele>3</ele></trkpt></trkseg></trk></gpx>";

        assertThat(refusal(text))
                .isEqualTo("a.gpx has 1 track points, none with a time, so nobody can tell when the aircraft was where;"
                        + " export it with times");
    }

    @Test
    void fileWithoutTrackIsRefusedThoughItBeginsWithAByteOrderMark() {
        assertThat(Logs.refusal(Logs.bytes("unicode_with_bom.gpx"), "a.gpx", IgcHeight.GNSS))
                .isEqualTo("a.gpx is a GPX file without track points; export the track, not only routes or waypoints");
    }

    @Test
    void pointsThatBreakTheRulesAreLeftOutWithTheirLines() throws FlightLogException {
        FlightLog log = Logs.text(HEAD + """
                <trk><trkseg>
                <trkpt lat="50" lon="6"><ele>1</ele><time>2020-01-01T00:00:00Z</time></trkpt>
                <trkpt lat="500" lon="6"><ele>1</ele><time>2020-01-01T00:00:01Z</time></trkpt>
                <trkpt lat="50.1" lon="6"><ele>abc</ele><time>2020-01-01T00:00:02Z</time></trkpt>
                <trkpt lat="50.2" lon="6"><ele>1</ele><time>yesterday</time></trkpt>
                <trkpt lon="6"><ele>1</ele><time>2020-01-01T00:00:04Z</time></trkpt>
                <trkpt lat="50.3" lon="6"><ele>2</ele><time>1066-10-14T00:00:00Z</time></trkpt>
                <trkpt lat="50.4" lon="6"><ele>2</ele><time>2019-01-01T00:00:00Z</time></trkpt>
                <trkpt lat="50.5" lon="6"><ele>2</ele><time>2020-01-01T00:00:05Z</time></trkpt>
                </trkseg></trk></gpx>
                """);

        assertThat(log.fixes()).extracting(Fix::latDeg).containsExactly(50.0, 50.5);
        assertThat(Logs.notes(log))
                .contains(
                        "line 5: the track point breaks the rules of GPX and was left out",
                        "line 6: the track point has no height (ele) that can be read and was left out",
                        "line 7: the track point has no time that can be read and was left out",
                        "line 8: the track point breaks the rules of GPX and was left out",
                        "line 9: the time of the track point is not in this century; left out",
                        "line 10: the time does not lie after the one before; left out");
    }

    @Test
    void laterTrackMayStandFirst() throws FlightLogException {
        FlightLog log =
                Logs.text(HEAD + segment("2020-01-01T00:00:09Z", 9) + segment("2020-01-01T00:00:01Z", 1) + "</gpx>");

        assertThat(log.fixes()).extracting(Fix::heightM).containsExactly(1.0, 9.0);
    }

    @Test
    void speedAndCourseOfVersionOneZeroAreRead() throws FlightLogException {
        FlightLog log =
                Logs.text("<gpx version='1.0' creator='t' xmlns='http://www.topografix.com/GPX/1/0'><trk><trkseg>"
                        + "<trkpt lat='1' lon='2'><ele>3</ele><time>2020-01-01T00:00:00Z</time><course>271.5</course>"
                        + "<speed>42.5</speed></trkpt></trkseg></trk></gpx>");

        assertThat(log.fixes().get(0).speedMps()).isEqualTo(42.5);
        assertThat(log.fixes().get(0).trackDeg()).isCloseTo(271.5, within(1e-9));
    }

    @Test
    void fileThatBreaksOffIsReadUpToThere() throws FlightLogException {
        String whole = new String(Logs.bytes("track-with-empty-segment.gpx"), StandardCharsets.UTF_8);
        FlightLog log = Logs.text(whole.substring(0, whole.indexOf("17:27:15")));

        assertThat(log.fixes()).hasSize(6);
        assertThat(Logs.notes(log))
                .containsExactly("the file is broken at line 32 and was read up to its last whole track point");
    }

    @Test
    void entitiesAreNeverRead() {
        String bomb = """
                <?xml version="1.0"?>
                <!DOCTYPE gpx [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;"><!ENTITY f SYSTEM "file:///etc/hostname">]>
                <gpx version="1.1" creator="&f;"><trk><name>&b;</name></trk></gpx>
                """;

        assertThat(refusal(bomb))
                .isEqualTo("a.gpx has a document type (DOCTYPE), which no GPX file needs and which is never read;"
                        + " remove it");
    }

    @Test
    void deepNestingIsRefused() {
        assertThat(refusal(HEAD + "<a>".repeat(100_000)))
                .isEqualTo(
                        "a.gpx has more than 50 elements inside each other, which no GPX file needs; export it again");
    }

    @Test
    void otherXmlIsRefusedByItsName() {
        assertThat(refusal("<?xml version='1.0'?><kml><Document/></kml>"))
                .isEqualTo("a.gpx is XML but not GPX: it begins with <kml>; export it as GPX 1.1");
    }

    @Test
    void extensionsAreSkippedWhateverTheyHold() throws FlightLogException {
        FlightLog log = Logs.text(
                HEAD + "<trk><trkseg><trkpt lat='1' lon='2'><ele>3</ele><time>2020-01-01T00:00:00Z</time>"
                        + "<extensions><x xmlns='urn:x'><extensions/><trkpt/></x></extensions></trkpt></trkseg></trk></gpx>");

        assertThat(log.fixes()).hasSize(1);
    }

    private static String segment(String time, int heightM) {
        return "<trk><trkseg><trkpt lat='1' lon='2'><ele>" + heightM + "</ele><time>" + time
                + "</time></trkpt></trkseg></trk>";
    }

    private static String refusal(String text) {
        return Logs.refusal(Nmea.bytes(text), "a.gpx", IgcHeight.GNSS);
    }
}
