package crowdline.show;

import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * Where the show is flown.
 *
 * @param name of the place
 * @param latDeg latitude of the datum, degrees north, −90 to 90
 * @param lonDeg longitude of the datum, degrees east, −180 to 180
 * @param elevationFt elevation of the datum above mean sea level in feet
 * @param axisBearingDeg true bearing of the A-axis towards the commentator's right, 0 to 360
 * @param crowdToLineM distance from the crowd line to the display line in metres, as given by the director
 * @param timeZone time zone of the running order
 * @param limits what the director and the authority gave; nothing is assumed
 */
public record Venue(
        String name,
        double latDeg,
        double lonDeg,
        double elevationFt,
        double axisBearingDeg,
        double crowdToLineM,
        ZoneId timeZone,
        Limits limits) {

    /**
     * Limits as given for this show; null means not given, and then nothing is checked against it.
     *
     * @param baseFt lowest height for aerobatics, feet above the datum
     * @param ceilingFt greatest height, feet above the datum
     * @param halfLengthM how far left and right of the datum the display area reaches, metres
     * @param depthM how far beyond the display line it reaches, metres
     */
    public record Limits(
            @Nullable Double baseFt,
            @Nullable Double ceilingFt,
            @Nullable Double halfLengthM,
            @Nullable Double depthM) {

        public static final Limits NONE = new Limits(null, null, null, null);

        public Limits {
            if (baseFt != null) {
                Quantity.BASE_FT.must(baseFt);
            }
            if (ceilingFt != null) {
                Quantity.CEILING_FT.must(ceilingFt);
            }
            if (halfLengthM != null) {
                Quantity.HALF_LENGTH_M.must(halfLengthM);
            }
            if (depthM != null) {
                Quantity.DEPTH_M.must(depthM);
            }
        }
    }

    public Venue {
        Most.mustBeText("venue name", name);
        Quantity.LAT_DEG.must(latDeg);
        Quantity.LON_DEG.must(lonDeg);
        Quantity.ELEVATION_FT.must(elevationFt);
        Quantity.AXIS_BEARING_DEG.must(axisBearingDeg);
        Quantity.CROWD_TO_LINE_M.must(crowdToLineM);
    }
}
