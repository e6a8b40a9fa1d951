package crowdline.flight.leg;

import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import org.jspecify.annotations.Nullable;

/**
 * A fall in which the nose points elsewhere than the path: the top of a stall turn, a tail slide, a tumble. Gravity,
 * thrust along the nose, and the drag of whatever is broadside act on the path; the nose turns about one axis.
 *
 * <p>Coordinates: x, y, z, three velocities through the air, angle turned by the nose, its rate.
 */
final class FallLeg implements Leg {
    private final Forces forces;
    private final FlightState from;
    private final Vec axis;
    /** The nose at an angle is cos · turning + sin · turned + still. */
    private final Vec turning;

    private final Vec turned;
    private final Vec still;
    private final double startAngleRad;
    private final double angleRad;
    private final Swing swing;
    private final double broadsideCd;
    private final double power;
    /** Where the nose ends up when the fall is over, or null for where it has turned to. */
    private final @Nullable Vec exit;

    private FallLeg(
            Forces forces,
            FlightState from,
            Vec axis,
            double startAngleRad,
            double angleRad,
            Swing swing,
            double broadsideCd,
            double power,
            @Nullable Vec exit) {
        this.forces = forces;
        this.from = from;
        this.axis = axis;
        still = axis.times(axis.dot(from.direction()));
        turning = from.direction().minus(still);
        turned = axis.cross(from.direction());
        this.startAngleRad = startAngleRad;
        this.angleRad = angleRad;
        this.swing = swing;
        this.broadsideCd = broadsideCd;
        this.power = power;
        this.exit = exit;
    }

    /** Half a turn in yaw in the airframe's own time, to the right for +1. */
    static FallLeg pivot(Forces forces, FlightState from, int side, double power) {
        // Turning from T towards S = T × U is a turn about −U.
        return prescribed(
                forces,
                from,
                from.up().times(-side),
                Math.PI,
                Math.PI / forces.body.pivotS(),
                SIDEWAYS_CD,
                power,
                null);
    }

    /** End over end about a slanting axis at the airframe's own rate, as after a negative flick. */
    static FallLeg tumble(Forces forces, FlightState from, int side, double turns, double power) {
        double lean = Math.toRadians(35);
        Vec axis = from.rightWing()
                .times(Math.cos(lean))
                .plus(from.direction().times(-side * Math.sin(lean)))
                .unit();
        double rate = forces.body.tumbleRateRadPerS();
        return prescribed(forces, from, axis.times(-1), 2 * Math.PI * turns, rate, FLAT_CD / 2, power, Vec.DOWN);
    }

    private static FallLeg prescribed(
            Forces forces,
            FlightState from,
            Vec axis,
            double angle,
            double rate,
            double cd,
            double power,
            @Nullable Vec exit) {
        return new FallLeg(forces, from, axis, 0, angle, Swing.steady(rate), cd, power, exit);
    }

    /**
     * Backwards from rest until the nose has fallen through: tail first is unstable, and the growing wind from behind
     * throws the nose over.
     *
     * @param wheelsDown +1 to fall through with the wheels below, −1 with the canopy below
     */
    static FallLeg slide(Forces forces, FlightState from, int wheelsDown, double power) {
        // T turning towards U is a turn about S = T × U, so towards −U it is one about −S.
        return new FallLeg(
                forces,
                from,
                from.rightWing().times(-wheelsDown),
                Math.toRadians(3),
                Math.PI,
                Swing.weathercock(forces.body.lengthM()),
                FLAT_CD,
                power,
                null);
    }

    /** Drag coefficient of the wing flat against the wind, referred to its area; from memory of flat-plate data. */
    static final double FLAT_CD = 1.2;
    /** Drag coefficient of the whole aircraft sideways, referred to the wing area; rough. */
    static final double SIDEWAYS_CD = 0.3;

    private static final double FALLING_MPS = 3;

    @Override
    public double[] start() {
        Vec p = from.place();
        Vec v = from.direction().times(from.speedMps());
        return new double[] {p.x(), p.y(), p.z(), v.x(), v.y(), v.z(), startAngleRad, 0};
    }

    @Override
    public void rates(double t, double[] y, double[] dy) {
        dy[0] = y[3];
        dy[1] = y[4];
        dy[2] = y[5];
        forces.drift(y[2], dy);
        double vx = y[3];
        double vy = y[4];
        double vz = y[5];
        double c = Math.cos(y[6]);
        double s = Math.sin(y[6]);
        double nx = c * turning.x() + s * turned.x() + still.x();
        double ny = c * turning.y() + s * turned.y() + still.y();
        double nz = c * turning.z() + s * turned.z() + still.z();
        double speed = Math.sqrt(vx * vx + vy * vy + vz * vz);
        double ahead = nx * vx + ny * vy + nz * vz;
        double rho = forces.rho(y[2]);
        double thrust = thrustMps2(rho, ahead);
        double drag = dragPerS(rho, speed, ahead);
        dy[3] = thrust * nx - drag * vx;
        dy[4] = thrust * ny - drag * vy;
        dy[5] = thrust * nz - drag * vz - Units.G_MPS2;
        double about = axis.x() * (ny * vz - nz * vy) + axis.y() * (nz * vx - nx * vz) + axis.z() * (nx * vy - ny * vx);
        dy[6] = swing.rateRadPerS(y[7]);
        dy[7] = swing.radPerS2(y[7], speed, speed < 1e-9 ? 0 : about / speed);
    }

    /** Thrust over mass, along the nose; {@code aheadMps} is the part of the motion along the nose. */
    private double thrustMps2(double rho, double aheadMps) {
        return forces.body.drive().thrustN(aheadMps, rho, power) / forces.body.massKg();
    }

    /** Drag over mass and speed, against the motion. */
    private double dragPerS(double rho, double speed, double aheadMps) {
        Body body = forces.body;
        double cos = speed < 1e-9 ? 1 : aheadMps / speed;
        double cd = body.cd0() + broadsideCd * (1 - cos * cos);
        return 0.5 * rho * speed * body.areaM2() * cd / body.massKg();
    }

    private Vec heading() {
        double h = from.headingRad();
        return new Vec(Math.cos(h), Math.sin(h), 0);
    }

    private static Vec velocity(double[] y) {
        return new Vec(y[3], y[4], y[5]);
    }

    private Vec nose(double angle) {
        return from.direction().turnedAbout(axis, angle);
    }

    private Vec up(double angle) {
        return from.up().turnedAbout(axis, angle);
    }

    @Override
    public double end(double t, double[] y) {
        double turned = y[6] - angleRad;
        // A tumble also goes on until it is falling.
        return exit == null ? turned : Math.min(turned, -y[5] - FALLING_MPS);
    }

    @Override
    public void look(double t, double[] y, Look look) {
        Vec nose = nose(y[6]);
        Vec up = up(y[6]);
        Vec v = velocity(y);
        double speed = v.length();
        double rho = forces.rho(y[2]);
        Vec drag = v.times(-dragPerS(rho, speed, v.dot(nose)));
        Vec push = nose.times(thrustMps2(rho, v.dot(nose))).plus(drag);
        look.direction(nose.x(), nose.y(), nose.z());
        look.up(up.x(), up.y(), up.z());
        look.speedMps = speed;
        look.rhoKgM3 = rho;
        look.thrustN = forces.body.drive().thrustN(v.dot(nose), rho, power);
        look.dragN = forces.body.massKg() * drag.length();
        double g = push.dot(up) / Units.G_MPS2;
        look.load(g, g);
        look.stalledOnPurpose = true;
    }

    /** Hands over pointing where the nose points; what speed there was across it is lost. */
    @Override
    public FlightState after(double tS, double t, double[] y) {
        Vec nose = exit == null ? nose(y[6]).unit() : exit;
        Vec belly = exit == null ? up(y[6]) : heading();
        Vec up = belly.across(nose).unit();
        return new FlightState(tS, new Vec(y[0], y[1], y[2]), velocity(y).dot(nose), nose, up);
    }

    @Override
    public int looksPerSample() {
        return 2;
    }

    @Override
    public double longestS() {
        return 20;
    }
}
