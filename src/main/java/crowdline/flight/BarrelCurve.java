package crowdline.flight;

/**
 * A barrel roll: the nose draws a circle round a point on the horizon to one side, up first, and comes back to where it
 * began.
 *
 * <p>With the point 15° off and six seconds the load felt is about 2.7 at the bottom and 0.7 at the top at 120 kt;
 * published handbooks ask for at most 2.5 to 3 and at least 0.5.
 */
final class BarrelCurve implements SteeredLeg.Curve {
    static final double USUAL_S = 6;
    private static final double OFF_RAD = Math.toRadians(15);

    private final Vec axis;
    private final Vec out;
    private final Vec up;
    private final double rateRadPerS;

    /** @param side +1 to roll to the right */
    BarrelCurve(Moment from, int side, double rateRadPerS) {
        this.rateRadPerS = rateRadPerS;
        Vec wing = from.rightWing().times(side);
        Vec nose = from.direction();
        axis = nose.times(Math.cos(OFF_RAD)).plus(wing.times(Math.sin(OFF_RAD)));
        out = nose.times(Math.sin(OFF_RAD)).plus(wing.times(-Math.cos(OFF_RAD)));
        up = from.up();
    }

    @Override
    public Vec direction(double angleRad) {
        double s = Math.sin(OFF_RAD);
        return axis.times(Math.cos(OFF_RAD))
                .plus(out.times(s * Math.cos(angleRad)))
                .plus(up.times(s * Math.sin(angleRad)));
    }

    @Override
    public double rateRadPerS(double angleRad, double speedMps) {
        return rateRadPerS;
    }
}
