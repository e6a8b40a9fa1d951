package crowdline.flight;

/**
 * One instant of a predicted flight.
 *
 * @param tS seconds since the act began
 * @param place in the display frame, metres
 * @param speedMps airspeed, m/s
 * @param nose direction of the nose, a unit vector
 * @param up the pilot's up, a unit vector
 * @param g load factor felt along the pilot's up
 * @param thrustN thrust, newtons
 * @param dragN drag, newtons
 */
public record Sample(double tS, Vec place, double speedMps, Vec nose, Vec up, double g, double thrustN, double dragN) {

    /** How far the nose points above the horizon, degrees. */
    public double pathAngleDeg() {
        return Math.toDegrees(Math.asin(Math.min(Math.max(nose.z(), -1), 1)));
    }

    /**
     * Bank against the upright attitude on the same path, degrees, right wing down positive, ±180 for inverted; 0 where
     * the path is so steep that it means nothing.
     */
    public double rollDeg() {
        Vec level = Vec.UP.across(nose);
        if (level.length() < 1e-3) {
            return 0;
        }
        Vec upright = level.unit();
        Vec wing = nose.cross(upright);
        return Math.toDegrees(Math.atan2(up.dot(wing), up.dot(upright)));
    }
}
