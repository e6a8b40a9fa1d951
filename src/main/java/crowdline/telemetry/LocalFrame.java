package crowdline.telemetry;

import crowdline.measure.Must;
import crowdline.measure.Units;
import crowdline.show.Venue;

/**
 * Turns positions into the display frame of a venue: X along the A-axis to the commentator's right, Y away from the
 * crowd, which is the A-axis turned 90° to the left, Z above the datum.
 *
 * <p>X and Y are those of the tangent plane at the datum for the place on the ellipsoid below the aircraft, WGS 84; within
 * 3 km they agree with the geodesic to better than 1 mm. At height the same angle spans a little more: 0.016 % for
 * each 1,000 m, not taken into account. Z is the height as given less the elevation of the datum, so it follows the
 * curve of the earth as heights above sea level do.
 */
public final class LocalFrame {
    /** WGS 84: NIMA TR8350.2, table 3.1. */
    private static final double EQUATOR_M = 6_378_137.0;

    private static final double FLATTENING = 1 / 298.257223563;
    private static final double E2 = FLATTENING * (2 - FLATTENING);

    private final double sinLat;
    private final double cosLat;
    private final double sinLon;
    private final double cosLon;
    private final double sinAxis;
    private final double cosAxis;
    private final double axisRad;
    private final double[] datum;
    private final double zeroM;

    public LocalFrame(Venue venue) {
        this(venue, 0);
    }

    /**
     * @param heightShiftM added to every height, metres: 0 for heights above sea level; −46.9 for heights above the
     *     ellipsoid where sea level lies 46.9 m above it; for pressure heights what the day's pressure makes
     * @throws IllegalArgumentException if the venue does not say where it is, how high and which way it lies; see
     *     {@link Venue#notPlaced}
     */
    public LocalFrame(Venue venue, double heightShiftM) {
        Must.beFinite("heightShiftM", heightShiftM);
        Double latDeg = venue.latDeg();
        Double lonDeg = venue.lonDeg();
        Double axisDeg = venue.axisBearingDeg();
        Double elevationFt = venue.elevationFt();
        if (latDeg == null || lonDeg == null || axisDeg == null || elevationFt == null) {
            throw new IllegalArgumentException(venue.notPlaced().orElse(""));
        }
        double latRad = Math.toRadians(latDeg);
        double lonRad = Math.toRadians(lonDeg);
        axisRad = Math.toRadians(axisDeg);
        sinLat = Math.sin(latRad);
        cosLat = Math.cos(latRad);
        sinLon = Math.sin(lonRad);
        cosLon = Math.cos(lonRad);
        sinAxis = Math.sin(axisRad);
        cosAxis = Math.cos(axisRad);
        datum = fromCentre(latRad, lonRad);
        zeroM = Units.mFromFt(elevationFt) - heightShiftM;
    }

    /** The same place and instant in the display frame; without speed where the fix lacks speed or track. */
    public Reading reading(Fix fix) {
        double[] place = fromCentre(Math.toRadians(fix.latDeg()), Math.toRadians(fix.lonDeg()));
        double x = place[0] - datum[0];
        double y = place[1] - datum[1];
        double z = place[2] - datum[2];
        double outwardM = cosLon * x + sinLon * y;
        double eastM = cosLon * y - sinLon * x;
        double northM = cosLat * z - sinLat * outwardM;
        Double alongMps = null;
        Double awayMps = null;
        Double speedMps = fix.speedMps();
        Double trackDeg = fix.trackDeg();
        if (speedMps != null && trackDeg != null) {
            double offAxisRad = Math.toRadians(trackDeg) - axisRad;
            alongMps = speedMps * Math.cos(offAxisRad);
            awayMps = -speedMps * Math.sin(offAxisRad);
        }
        return new Reading(
                fix.tS(),
                eastM * sinAxis + northM * cosAxis,
                northM * sinAxis - eastM * cosAxis,
                fix.heightM() - zeroM,
                alongMps,
                awayMps);
    }

    /** A place on the ellipsoid, metres from the centre of the earth: towards 0° E, 90° E and the north pole. */
    private static double[] fromCentre(double latRad, double lonRad) {
        double sin = Math.sin(latRad);
        double acrossM = EQUATOR_M / Math.sqrt(1 - E2 * sin * sin);
        double fromAxisM = acrossM * Math.cos(latRad);
        return new double[] {fromAxisM * Math.cos(lonRad), fromAxisM * Math.sin(lonRad), acrossM * (1 - E2) * sin};
    }
}
