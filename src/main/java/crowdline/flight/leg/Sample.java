package crowdline.flight.leg;

import crowdline.flight.body.Attitude;
import crowdline.flight.body.Vec;

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

    /** How it lies in the air. */
    public Attitude attitude() {
        return Attitude.of(nose, up);
    }

    /** How far the nose points above the horizon, degrees. */
    public double pathAngleDeg() {
        return attitude().pathDeg();
    }

    /**
     * Bank against the upright attitude on the same path, degrees, right wing down positive, ±180 for inverted; 0 where
     * the path is so steep that it means nothing.
     */
    public double rollDeg() {
        return attitude().bankDeg();
    }
}
