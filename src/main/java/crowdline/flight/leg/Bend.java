package crowdline.flight.leg;

import crowdline.flight.body.Vec;

/** A direction along a curve and how it changes with the curve's angle, written over and over. */
final class Bend {
    double tx;
    double ty;
    double tz;
    double slopeX;
    double slopeY;
    double slopeZ;

    void direction(double x, double y, double z) {
        tx = x;
        ty = y;
        tz = z;
    }

    void slope(double x, double y, double z) {
        slopeX = x;
        slopeY = y;
        slopeZ = z;
    }

    Vec direction() {
        return new Vec(tx, ty, tz);
    }
}
