package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;

/**
 * A path whose direction is a given curve of one angle, flown in balance: level turns, wing-overs, rolling turns and
 * barrel rolls, held over the ground against the wind. The force across the path is whatever bends it so; U points along that force unless the turn rolls.
 *
 * <p>Coordinates: x, y, z, airspeed, angle along the curve.
 */
final class SteeredLeg implements Leg {
    /** A curve of directions by one angle. */
    interface Curve {
        /** Writes the direction at an angle, a unit vector, and its slope. */
        void at(double angleRad, Bend bend);

        /** How fast the angle grows, rad/s, at an airspeed in m/s. */
        double rateRadPerS(double speedMps);
    }

    private final Forces forces;
    private final FlightState from;
    private final Curve curve;
    private final double angleRad;
    private final double rollsPerRad;
    private final Banking banking;
    private final double power;
    private final Vec exitDirection;
    private final Bend bend = new Bend();

    /**
     * How the wings go into the bank and out of it; the path is bent from its first moment to its last.
     *
     * @param fromRad the bank it begins in, radians, right wing down positive
     * @param inRad over so much of the curve they go into the bank that balances it, at most half of it
     * @param outRad over so much of it they come back to level at its end; 0 to stay banked
     */
    record Banking(double fromRad, double inRad, double outRad) {
        /** Nothing but the force that bends the path says how the wings lie, and at the end they are level. */
        static final Banking BALANCED = new Banking(0, 0, 0);

        /**
         * For a turn at a bank.
         *
         * @param bankRad right wing down positive
         * @param stays true to stay banked at its end
         * @param perRollRad how much of the curve is flown while the wings roll through a radian
         */
        static Banking of(double fromRad, double bankRad, boolean stays, double perRollRad, double wholeRad) {
            double most = wholeRad / 2;
            return new Banking(
                    fromRad,
                    Math.min(perRollRad * Math.abs(bankRad - fromRad), most),
                    stays ? 0 : Math.min(perRollRad * Math.abs(bankRad), most));
        }

        boolean staysBanked() {
            return !equals(BALANCED) && outRad == 0;
        }

        /** The bank at an angle along a curve with so much left of it, where one would balance it. */
        double at(double angleRad, double leftRad, double balancedRad) {
            double done = Math.max(angleRad, 0);
            if (done < inRad) {
                return fromRad + (balancedRad - fromRad) * done / inRad;
            }
            double left = Math.max(leftRad, 0);
            return left < outRad ? balancedRad * left / outRad : balancedRad;
        }
    }

    /**
     * @param angleRad where the curve ends
     * @param rollsPerRad roll angle for each radian of the curve; 0 flies in balance
     */
    SteeredLeg(Forces forces, FlightState from, Curve curve, double angleRad, double rollsPerRad, double power) {
        this(forces, from, curve, angleRad, rollsPerRad, Banking.BALANCED, power);
    }

    SteeredLeg(
            Forces forces,
            FlightState from,
            Curve curve,
            double angleRad,
            double rollsPerRad,
            Banking banking,
            double power) {
        this.banking = banking;
        this.forces = forces;
        this.from = from;
        this.curve = curve;
        this.angleRad = angleRad;
        this.rollsPerRad = rollsPerRad;
        this.power = power;
        curve.at(angleRad, bend);
        exitDirection = bend.direction();
    }

    @Override
    public double[] start() {
        Vec p = from.place();
        return new double[] {p.x(), p.y(), p.z(), from.speedMps(), 0};
    }

    @Override
    public void rates(double t, double[] y, double[] dy) {
        curve.at(y[4], bend);
        double v = Math.max(y[3], 1);
        double over = forces.hold(y, y[3], bend.tx, bend.ty, bend.tz, dy);
        double rate = curve.rateRadPerS(v) * over / v;
        double climb = bend.tz * Forces.share(over, v);
        dy[3] = forces.alongMps2(y[2], y[3], bend.tx, bend.ty, climb, acrossMps2(over * rate), power, 0);
        dy[4] = rate;
    }

    /** Size of the acceleration the air must give: to bend the path, and against gravity across it. */
    private double acrossMps2(double bendingMps2) {
        double x = acrossX(bendingMps2);
        double y = acrossY(bendingMps2);
        double z = acrossZ(bendingMps2);
        return Math.sqrt(x * x + y * y + z * z);
    }

    private double acrossX(double bendingMps2) {
        return bendingMps2 * bend.slopeX - Units.G_MPS2 * bend.tz * bend.tx;
    }

    private double acrossY(double bendingMps2) {
        return bendingMps2 * bend.slopeY - Units.G_MPS2 * bend.tz * bend.ty;
    }

    private double acrossZ(double bendingMps2) {
        return bendingMps2 * bend.slopeZ + Units.G_MPS2 * (1 - bend.tz * bend.tz);
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
        curve.at(y[4], bend);
        Vec d = bend.direction();
        Vec across = across(y);
        Vec u = up(y[4], d, across);
        look.direction(d.x(), d.y(), d.z());
        look.up(u.x(), u.y(), u.z());
        forces.see(y[2], y[3], across.length(), power, 0, look);
        double asked = across.dot(u) / Units.G_MPS2;
        look.load(forces.capG(look.rhoKgM3, y[3], asked), asked);
        look.keptAnyway = true;
    }

    /** What the air must give where the curve is bent now, m/s². */
    private Vec across(double[] y) {
        double v = Math.max(y[3], 1);
        double over = forces.overGroundMps(y[2], y[3], bend.tx, bend.ty);
        double bending = over * over / v * curve.rateRadPerS(v);
        return new Vec(acrossX(bending), acrossY(bending), acrossZ(bending));
    }

    private Vec up(double angle, Vec d, Vec across) {
        if (rollsPerRad == 0) {
            return across.length() > 1e-6
                    ? banked(angle, d, across.unit())
                    : from.up().across(d).unit();
        }
        return from.up().across(d).unit().turnedAbout(d, rollsPerRad * angle);
    }

    private Vec banked(double angle, Vec d, Vec across) {
        if (banking.equals(Banking.BALANCED)) {
            return across;
        }
        Vec full = from.up().z() < 0 ? across.times(-1) : across;
        Vec level = from.up().across(d).unit();
        double balanced = Math.atan2(d.cross(level).dot(full), level.dot(full));
        return level.turnedAbout(d, banking.at(angle, angleRad - angle, balanced));
    }

    @Override
    public FlightState after(double tS, double t, double[] y) {
        Vec up;
        if (banking.staysBanked() && rollsPerRad == 0) {
            curve.at(angleRad, bend);
            up = up(angleRad, exitDirection, across(y));
        } else {
            // Out of the bank again: level wings.
            up = from.up().across(exitDirection).unit();
        }
        return new FlightState(tS, new Vec(y[0], y[1], y[2]), y[3], exitDirection, up);
    }
}
