package crowdline.telemetry;

import crowdline.measure.Must;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A position as a receiver or a flight log gives it.
 *
 * @param tS seconds on the receiver's own scale, which only goes forward; where it begins means nothing
 * @param utc the same by the calendar, or null where the date is not known
 * @param latDeg degrees north, −90 to 90, WGS 84
 * @param lonDeg degrees east, −180 to 180, WGS 84
 * @param heightM metres above what {@code heightKind} says
 * @param heightKind what the height is measured from
 * @param speedMps speed over the ground, 0 or more, or null where not told
 * @param trackDeg true direction over the ground, 0 to 360, or null where not told
 * @param quality how the position came about
 */
public record Fix(
        double tS,
        @Nullable Instant utc,
        double latDeg,
        double lonDeg,
        double heightM,
        HeightKind heightKind,
        @Nullable Double speedMps,
        @Nullable Double trackDeg,
        FixQuality quality) {

    public Fix {
        Must.beFinite("tS", tS);
        Must.beWithin("latDeg", latDeg, -90, 90);
        Must.beWithin("lonDeg", lonDeg, -180, 180);
        Must.beFinite("heightM", heightM);
        if (speedMps != null) {
            Must.beWithin("speedMps", speedMps, 0, Double.MAX_VALUE);
        }
        if (trackDeg != null) {
            Must.beWithin("trackDeg", trackDeg, 0, 360);
        }
    }
}
