package crowdline.flight.body;

/**
 * How the aircraft lies in the air.
 *
 * @param pathDeg how far the nose points above the horizon, degrees, −90 to 90
 * @param bankDeg bank against the upright attitude on the same path, degrees, right wing down positive, ±180 for
 *     inverted; 0 where the path is so steep that it means nothing
 */
public record Attitude(double pathDeg, double bankDeg) {
    public static Attitude of(Vec nose, Vec up) {
        double path = Math.toDegrees(Math.asin(Math.min(Math.max(nose.z(), -1), 1)));
        Vec level = Vec.UP.across(nose);
        if (level.length() < 1e-3) {
            return new Attitude(path, 0);
        }
        Vec upright = level.unit();
        Vec wing = nose.cross(upright);
        return new Attitude(path, Math.toDegrees(Math.atan2(up.dot(wing), up.dot(upright))));
    }

    public static Attitude of(FlightState state) {
        return of(state.direction(), state.up());
    }
}
