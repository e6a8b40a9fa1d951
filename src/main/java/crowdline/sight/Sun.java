package crowdline.sight;

import crowdline.show.Venue;
import java.time.Instant;
import java.util.Optional;
import org.shredzone.commons.suncalc.SunPosition;

/**
 * Where the sun stands, to 0.02° against the NREL solar position algorithm.
 *
 * @param azimuthDeg true bearing, 0 to 360
 * @param altitudeDeg above the horizon, with refraction
 */
public record Sun(double azimuthDeg, double altitudeDeg) {

    /** Where the sun stands over a venue; empty if nobody knows where that is. */
    public static Optional<Sun> over(Venue venue, Instant at) {
        Double latDeg = venue.latDeg();
        Double lonDeg = venue.lonDeg();
        return latDeg == null || lonDeg == null ? Optional.empty() : Optional.of(at(latDeg, lonDeg, at));
    }

    /**
     * Where the sun stands over a place at sea level.
     *
     * @param latDeg north
     * @param lonDeg east
     */
    public static Sun at(double latDeg, double lonDeg, Instant at) {
        SunPosition sun = SunPosition.compute().on(at).at(latDeg, lonDeg).execute();
        return new Sun(sun.getAzimuth(), sun.getAltitude());
    }

    /** True while any of it can be seen over a level horizon. */
    public boolean isUp() {
        return altitudeDeg > -0.3;
    }

    /**
     * The angle between the sun and where the crowd looks, degrees.
     *
     * @param axisBearingDeg true bearing of the A-axis towards the commentator's right; straight out is 90° less
     */
    public double degreesFrom(Sighting look, double axisBearingDeg) {
        double bearingRad = Math.toRadians(axisBearingDeg - 90 + look.rightDeg() - azimuthDeg);
        double up = Math.toRadians(look.upDeg());
        double sun = Math.toRadians(altitudeDeg);
        double cos = Math.sin(up) * Math.sin(sun) + Math.cos(up) * Math.cos(sun) * Math.cos(bearingRad);
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cos))));
    }
}
