package crowdline.flight.body;

import crowdline.measure.Units;

/**
 * What one element, or one figure, hands to the next.
 *
 * @param tS seconds since the act began
 * @param place in the display frame, metres
 * @param speedMps airspeed along {@code direction}, m/s; negative when sliding backwards
 * @param direction T, a unit vector
 * @param up U, a unit vector at a right angle to T
 */
public record FlightState(double tS, Vec place, double speedMps, Vec direction, Vec up) {
    /** Level and upright along the display line, to the commentator's right or to the left. */
    public static FlightState along(Vec place, double speedMps, boolean toRight) {
        return new FlightState(0, place, speedMps, new Vec(toRight ? 1 : -1, 0, 0), Vec.UP);
    }

    /** Whether it flies to the commentator's right. */
    public boolean toRight() {
        return Math.cos(headingRad()) >= 0;
    }

    /** Whether the pilot hangs head down. */
    public boolean upsideDown() {
        return up.z() < 0;
    }

    public Vec rightWing() {
        return direction.cross(up);
    }

    /** The pilot's up after a roll about the direction, right wing down for a positive angle. */
    public Vec rolledUp(double rollRad) {
        return up.times(Math.cos(rollRad)).plus(rightWing().times(Math.sin(rollRad)));
    }

    /** How far it would roll about its direction to have its up there, radians, right wing down positive, −π to π. */
    public double rollTo(Vec there) {
        return Math.atan2(there.dot(rightWing()), there.dot(up));
    }

    /** Later and elsewhere in the same direction, after a roll about it, right wing down for a positive angle. */
    public FlightState rolled(double laterS, Vec there, double mps, double rollRad) {
        return new FlightState(laterS, there, mps, direction, rolledUp(rollRad).unit());
    }

    /** The same elsewhere. */
    public FlightState at(Vec there) {
        return new FlightState(tS, there, speedMps, direction, up);
    }

    /** The same at another airspeed, m/s. */
    public FlightState withSpeed(double mps) {
        return new FlightState(tS, place, mps, direction, up);
    }

    public FlightState facing(Vec newDirection, Vec newUp) {
        Vec t = newDirection.unit();
        return new FlightState(tS, place, speedMps, t, newUp.across(t).unit());
    }

    /** Height plus speed as height, metres. */
    public double energyHeightM() {
        return place.z() + speedMps * speedMps / (2 * Units.G_MPS2);
    }

    /**
     * Level direction closest to where it points. Straight up it is where the wheels look, straight down where the canopy
     * looks: where it flew before it was pulled up, and where it flies when it is pulled out.
     */
    public double headingRad() {
        if (Math.hypot(direction.x(), direction.y()) > 1e-9) {
            return Math.atan2(direction.y(), direction.x());
        }
        double facing = direction.z() > 0 ? -1 : 1;
        return Math.atan2(facing * up.y(), facing * up.x());
    }
}
