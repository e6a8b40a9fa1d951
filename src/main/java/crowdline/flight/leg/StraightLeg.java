package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;

/**
 * A straight line, with or without a roll about it, held over the ground against the wind. Whatever force across the
 * path holds it straight; the pilot feels
 * its part along U, so a slow roll on a level line feels +1, 0, −1, 0, +1 by itself.
 *
 * <p>Coordinates: x, y, z, airspeed, roll angle (right wing down is positive).
 */
final class StraightLeg implements Leg {
    /** How fast it rolls, rad/s, signed; may depend on airspeed in m/s. */
    interface RollLaw {
        double rateRadPerS(double speedMps);
    }

    /** Ends the line when it rises through zero. */
    interface EndLaw {
        double beyond(double t, double[] y);
    }

    static final RollLaw NO_ROLL = v -> 0;

    private final Forces forces;
    private final FlightState from;
    private final double power;
    private final RollLaw roll;
    private final EndLaw end;
    /** Share of the wing's largest lift held along U by a flick; 0 where the wing flies. */
    private final double stalledLift;

    private final double extraCd;
    private final double acrossMps2;
    private final double dueS;

    private StraightLeg(
            Forces forces,
            FlightState from,
            double power,
            RollLaw roll,
            EndLaw end,
            double stalledLift,
            double extraCd,
            double dueS) {
        this.forces = forces;
        this.from = from;
        this.power = power;
        this.roll = roll;
        this.end = end;
        this.stalledLift = stalledLift;
        this.extraCd = extraCd;
        this.dueS = dueS;
        double tz = from.direction().z();
        acrossMps2 = Units.G_MPS2 * Math.sqrt(Math.max(0, 1 - tz * tz));
    }

    /** A line without a roll. */
    static StraightLeg line(Forces forces, FlightState from, double power, EndLaw end) {
        return new StraightLeg(forces, from, power, NO_ROLL, end, 0, 0, Double.POSITIVE_INFINITY);
    }

    /** A line without a roll for some seconds. */
    static StraightLeg line(Forces forces, FlightState from, double power, double seconds) {
        return new StraightLeg(forces, from, power, NO_ROLL, (t, y) -> t - seconds, 0, 0, seconds);
    }

    /** A line with a roll through an angle in radians, positive to the right. */
    static StraightLeg roll(Forces forces, FlightState from, double power, double angleRad, RollLaw law) {
        EndLaw end = turned(Math.abs(angleRad));
        return new StraightLeg(forces, from, power, law, end, 0, 0, Double.POSITIVE_INFINITY);
    }

    /** A line with a roll through an angle in radians at a steady rate, both positive to the right. */
    static StraightLeg roll(Forces forces, FlightState from, double power, double angleRad, double rateRadPerS) {
        EndLaw end = turned(Math.abs(angleRad));
        return new StraightLeg(forces, from, power, v -> rateRadPerS, end, 0, 0, angleRad / rateRadPerS);
    }

    private static EndLaw turned(double sizeRad) {
        return (t, y) -> Math.abs(y[4]) - sizeRad;
    }

    /**
     * A flick: autorotation at the airframe's own rate.
     *
     * @param angleRad how far round, positive to the right
     * @param sign +1 for a positive flick, −1 for a negative one
     */
    static StraightLeg flick(Forces forces, FlightState from, double power, double angleRad, int sign) {
        EndLaw end = turned(Math.abs(angleRad));
        double rate = Math.copySign(forces.body.flickRateRadPerS(), angleRad);
        return new StraightLeg(forces, from, power, v -> rate, end, sign, STALLED_CD, angleRad / rate);
    }

    /**
     * Drag coefficient a stalled wing adds, referred to the wing area: a plate at about 25° (CD about 2 sin³ 25° + the
     * lost suction, from memory of flat-plate data), tuned to give the loss of some 15 kt in one flick that is common
     * practice, no source.
     */
    static final double STALLED_CD = 0.45;

    @Override
    public double[] start() {
        Vec p = from.place();
        return new double[] {p.x(), p.y(), p.z(), from.speedMps(), 0};
    }

    @Override
    public void rates(double t, double[] y, double[] dy) {
        Vec d = from.direction();
        double over = forces.hold(y, y[3], d.x(), d.y(), d.z(), dy);
        double climb = d.z() * Forces.share(over, y[3]);
        dy[3] = forces.alongMps2(y[2], y[3], d.x(), d.y(), climb, acrossMps2, power, extraCd);
        dy[4] = roll.rateRadPerS(y[3]);
    }

    @Override
    public double end(double t, double[] y) {
        return end.beyond(t, y);
    }

    @Override
    public void look(double t, double[] y, Look look) {
        Vec d = from.direction();
        look.direction(d.x(), d.y(), d.z());
        look.up(from.rolledUp(y[4]));
        forces.see(y[2], y[3], acrossMps2, power, extraCd, look);
        double asked = look.uz;
        if (stalledLift == 0) {
            look.load(forces.capG(look.rhoKgM3, y[3], asked), asked);
            look.keptAnyway = true;
        } else {
            double most = forces.capG(look.rhoKgM3, y[3], stalledLift > 0 ? 99 : -99);
            look.load(most, most);
            look.stalledOnPurpose = true;
        }
    }

    @Override
    public FlightState after(double tS, double t, double[] y) {
        return from.rolled(tS, new Vec(y[0], y[1], y[2]), y[3], y[4]);
    }

    @Override
    public double dueS() {
        return dueS;
    }

    @Override
    public int looksPerSample() {
        return roll == NO_ROLL ? 1 : 2;
    }
}
