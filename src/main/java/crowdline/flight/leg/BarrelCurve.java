package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;

/**
 * A barrel roll: the nose draws a circle round a point on the horizon to one side, up first, and comes back to where it
 * began.
 *
 * <p>With the point 15° off and six seconds the load felt is about 2.7 at the bottom and 0.7 at the top at 120 kt;
 * published handbooks ask for at most 2.5 to 3 and at least 0.5.
 */
public final class BarrelCurve implements SteeredLeg.Curve {
    static final double USUAL_S = 6;
    private static final double OFF_RAD = Math.toRadians(15);
    /** Sine of how far the point lies off. */
    public static final double SIN_OFF = Math.sin(OFF_RAD);

    private final Vec middle;
    private final Vec out;
    private final Vec up;
    private final double rateRadPerS;

    /** @param side +1 to roll to the right */
    BarrelCurve(FlightState from, int side, double rateRadPerS) {
        this.rateRadPerS = rateRadPerS;
        double c = Math.cos(OFF_RAD);
        double s = Math.sin(OFF_RAD);
        Vec wing = from.rightWing().times(side);
        Vec nose = from.direction();
        middle = nose.times(c).plus(wing.times(s)).times(c);
        out = nose.times(s).plus(wing.times(-c)).times(s);
        up = from.up().times(s);
    }

    @Override
    public void at(double angleRad, Bend bend) {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        bend.direction(
                middle.x() + c * out.x() + s * up.x(),
                middle.y() + c * out.y() + s * up.y(),
                middle.z() + c * out.z() + s * up.z());
        bend.slope(c * up.x() - s * out.x(), c * up.y() - s * out.y(), c * up.z() - s * out.z());
    }

    @Override
    public double rateRadPerS(double speedMps) {
        return rateRadPerS;
    }
}
