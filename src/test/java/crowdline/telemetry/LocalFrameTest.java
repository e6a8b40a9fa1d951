package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.Venue;
import java.time.ZoneOffset;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LocalFrameTest {
    private static final double FT_M = 0.3048;

    /** Places by GeographicLib-Java 2.1, which solves the geodesic exactly: all round, out to 3 km. */
    @ParameterizedTest(name = "datum at {0}, {1}, axis {2}")
    @CsvSource({"52.1, -0.1, 90", "0, 0, 0", "-41.32, 179.9995, 237", "69.9, 20, 10", "-33, -70, 359"})
    void planeAgreesWithTheGeodesicWithinThreeKilometres(double latDeg, double lonDeg, double axisDeg) {
        LocalFrame frame = new LocalFrame(venue(latDeg, lonDeg, 0, axisDeg));
        double worstM = 0;
        for (int bearing = 0; bearing < 360; bearing += 15) {
            for (double distanceM : new double[] {1, 300, 1000, 3000}) {
                GeodesicData there = Geodesic.WGS84.Direct(latDeg, lonDeg, bearing, distanceM);
                Reading reading = frame.reading(fix(there.lat2, there.lon2, 0, null, null));
                double offAxisRad = Math.toRadians(bearing - axisDeg);
                worstM = Math.max(
                        worstM,
                        Math.hypot(
                                reading.alongM() - distanceM * Math.cos(offAxisRad),
                                reading.awayM() + distanceM * Math.sin(offAxisRad)));
            }
        }

        assertThat(worstM).isLessThan(0.1).isLessThan(0.001);
    }

    /** The worked example of {@link Reading}. */
    @Test
    void northOfAnAxisThatBearsEastIsAwayFromTheCrowd() {
        GeodesicData east = Geodesic.WGS84.Direct(52, -1, 90, 200);
        GeodesicData there = Geodesic.WGS84.Direct(east.lat2, east.lon2, 0, 300);
        Reading reading =
                new LocalFrame(venue(52, -1, 100, 90)).reading(fix(there.lat2, there.lon2, 1100 * FT_M, null, null));

        assertThat(reading.alongM()).isCloseTo(200, within(0.05));
        assertThat(reading.awayM()).isCloseTo(300, within(0.05));
        assertThat(reading.heightM()).isCloseTo(304.8, within(1e-9));
    }

    @Test
    void speedTurnsWithTheAxis() {
        LocalFrame frame = new LocalFrame(venue(52, -1, 0, 240));

        Reading along = frame.reading(fix(52, -1, 0, 70.0, 240.0));
        assertThat(along.alongMps()).isCloseTo(70, within(1e-9));
        assertThat(along.awayMps()).isCloseTo(0, within(1e-9));

        // 90° to the left of the axis, as seen from above.
        Reading away = frame.reading(fix(52, -1, 0, 70.0, 150.0));
        assertThat(away.alongMps()).isCloseTo(0, within(1e-9));
        assertThat(away.awayMps()).isCloseTo(70, within(1e-9));
    }

    @Test
    void speedPointsWhereThePositionGoes() {
        LocalFrame frame = new LocalFrame(venue(48, 11, 0, 33));
        GeodesicData after = Geodesic.WGS84.Direct(48, 11, 287, 60);
        Reading start = frame.reading(fix(48, 11, 0, 60.0, 287.0));
        Reading end = frame.reading(fix(after.lat2, after.lon2, 0, null, null));

        assertThat(end.alongM() - start.alongM()).isCloseTo(start.alongMps(), within(0.001));
        assertThat(end.awayM() - start.awayM()).isCloseTo(start.awayMps(), within(0.001));
    }

    @Test
    void speedWithoutTrackIsUnknown() {
        Reading reading = new LocalFrame(venue(52, -1, 0, 90)).reading(fix(52, -1, 0, 0.02, null));

        assertThat(reading.alongMps()).isNull();
        assertThat(reading.awayMps()).isNull();
    }

    @Test
    void heightShiftIsAdded() {
        LocalFrame frame = new LocalFrame(venue(48, 11, 0, 0), -46.9);

        assertThat(frame.reading(fix(48, 11, 592.3, null, null)).heightM()).isCloseTo(545.4, within(1e-9));
        assertThatThrownBy(() -> new LocalFrame(venue(48, 11, 0, 0), Double.NaN))
                .hasMessage("heightShiftM is NaN; it must be a number");
    }

    @Test
    void aVenueThatDoesNotSayWhereItIsHasNoFrame() {
        Venue bare = new Venue("Field", null, null, null, 90.0, null, ZoneOffset.UTC, Venue.Limits.NONE);

        assertThatThrownBy(() -> new LocalFrame(bare))
                .hasMessage("the aircraft cannot be placed without the venue's latDeg, lonDeg and elevationFt; add"
                        + " them to the show file");
    }

    private static Venue venue(double latDeg, double lonDeg, double elevationFt, double axisDeg) {
        return new Venue("Field", latDeg, lonDeg, elevationFt, axisDeg, 230, ZoneOffset.UTC, Venue.Limits.NONE);
    }

    private static Fix fix(
            double latDeg, double lonDeg, double heightM, @Nullable Double speedMps, @Nullable Double trackDeg) {
        return new Fix(
                0, null, latDeg, lonDeg, heightM, HeightKind.SEA_LEVEL, speedMps, trackDeg, FixQuality.SATELLITE);
    }
}
