package crowdline.flight;

/**
 * A path whose direction is a given curve of one angle, flown in balance: level turns, wing-overs, rolling turns and
 * barrel rolls. The force across the path is whatever bends it so; U points along that force unless the turn rolls.
 *
 * <p>Coordinates: x, y, z, airspeed, angle along the curve.
 */
final class SteeredLeg implements Leg {
    /** A curve of directions by one angle. */
    interface Curve {
        /** Direction at an angle, a unit vector. */
        Vec direction(double angleRad);

        /** How fast the angle grows, rad/s, at an airspeed in m/s. */
        double rateRadPerS(double angleRad, double speedMps);
    }

    private static final double SLOPE_STEP_RAD = 1e-5;

    private final Forces forces;
    private final Moment from;
    private final Curve curve;
    private final double angleRad;
    private final double rollsPerRad;
    private final double power;
    private final Vec exitDirection;

    /**
     * @param angleRad where the curve ends
     * @param rollsPerRad roll angle for each radian of the curve; 0 flies in balance
     */
    SteeredLeg(Forces forces, Moment from, Curve curve, double angleRad, double rollsPerRad, double power) {
        this.forces = forces;
        this.from = from;
        this.curve = curve;
        this.angleRad = angleRad;
        this.rollsPerRad = rollsPerRad;
        this.power = power;
        exitDirection = curve.direction(angleRad);
    }

    @Override
    public double[] start() {
        Vec p = from.place();
        return new double[] {p.x(), p.y(), p.z(), from.speedMps(), 0};
    }

    @Override
    public void rates(double t, double[] y, double[] dy) {
        Vec d = curve.direction(y[4]);
        double rate = curve.rateRadPerS(y[4], Math.max(y[3], 1));
        Vec across = acrossMps2(y, d, rate);
        forces.move(y, y[3], d.x(), d.y(), d.z(), dy);
        dy[3] = forces.alongMps2(y[2], y[3], d.x(), d.y(), d.z(), across.length(), power, 0);
        dy[4] = rate;
    }

    /** Acceleration the air must give: to bend the path, and against gravity across it. */
    private Vec acrossMps2(double[] y, Vec d, double rate) {
        Vec slope = curve.direction(y[4] + SLOPE_STEP_RAD)
                .plus(curve.direction(y[4] - SLOPE_STEP_RAD).times(-1))
                .times(1 / (2 * SLOPE_STEP_RAD));
        return slope.times(y[3] * rate).plus(Vec.UP.times(Units.G_MPS2).across(d));
    }

    @Override
    public double end(double t, double[] y) {
        return y[4] - angleRad;
    }

    @Override
    public boolean outOfSpeed(double t, double[] y) {
        return y[3] < 5;
    }

    @Override
    public void look(double t, double[] y, Look look) {
        Vec d = curve.direction(y[4]);
        Vec across = acrossMps2(y, d, curve.rateRadPerS(y[4], Math.max(y[3], 1)));
        Vec u = up(y[4], d, across);
        look.direction(d.x(), d.y(), d.z());
        look.up(u.x(), u.y(), u.z());
        forces.see(y[2], y[3], across.length(), power, 0, look);
        double asked = across.dot(u) / Units.G_MPS2;
        look.load(forces.capG(look.rhoKgM3, y[3], asked), asked);
    }

    private Vec up(double angle, Vec d, Vec across) {
        if (rollsPerRad == 0) {
            return across.length() > 1e-6 ? across.unit() : from.up().across(d).unit();
        }
        return from.up().across(d).unit().turnedAbout(d, rollsPerRad * angle);
    }

    @Override
    public Moment after(double tS, double t, double[] y) {
        // Out of the bank again: level wings, as it began.
        Vec up = from.up().across(exitDirection).unit();
        return new Moment(tS, new Vec(y[0], y[1], y[2]), y[3], exitDirection, up);
    }
}
