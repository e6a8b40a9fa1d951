package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;

/**
 * A bend in the plane of T and U: a pull towards U or a push away from it, through an angle found to 1e-9 rad.
 *
 * <p>With the load factor n felt along U: θ' = ±g (n − U_z) / V. By radius: θ' = V / R, where V is over the ground and R
 * may shrink from the bottom of a loop to its top: see LoopShape. A pull beyond what the wing can give is flown at its limit. Coordinates: x, y, z, airspeed, angle turned.
 */
final class ArcLeg implements Leg {
    private final Forces forces;
    private final FlightState from;
    private final double angleRad;
    private final int sign;
    private final double radiusM;
    private final LoopShape shape;
    private final double loadG;
    private final boolean atLimit;
    private final double power;
    private final double sideMps2;

    private ArcLeg(
            Forces forces,
            FlightState from,
            double angleRad,
            int sign,
            double radiusM,
            double topShare,
            double loadG,
            boolean atLimit,
            double power) {
        this.forces = forces;
        this.from = from;
        this.angleRad = angleRad;
        this.sign = sign;
        this.radiusM = radiusM;
        shape = LoopShape.ofTop(topShare);
        this.loadG = loadG;
        this.atLimit = atLimit;
        this.power = power;
        sideMps2 = Units.G_MPS2 * from.rightWing().z();
    }

    /**
     * @param sign +1 for a pull, −1 for a push
     * @param loadG load factor felt, g
     */
    static ArcLeg byLoad(Forces forces, FlightState from, double angleRad, int sign, double loadG, double power) {
        return new ArcLeg(forces, from, angleRad, sign, 0, 1, loadG, false, power);
    }

    /** As tight as the wing and the load limit allow. */
    static ArcLeg tightest(Forces forces, FlightState from, double angleRad, int sign, double power) {
        double limit = sign > 0 ? forces.body.limitPositiveG() : forces.body.limitNegativeG();
        return new ArcLeg(forces, from, angleRad, sign, 0, 1, limit, true, power);
    }

    static ArcLeg byRadius(Forces forces, FlightState from, double angleRad, int sign, double radiusM, double power) {
        return byRadius(forces, from, angleRad, sign, radiusM, 1, power);
    }

    /**
     * @param radiusM radius at the bottom of a loop, metres
     * @param topShare radius at its top as a share of that, above 0 to 1
     */
    static ArcLeg byRadius(
            Forces forces, FlightState from, double angleRad, int sign, double radiusM, double topShare, double power) {
        return new ArcLeg(forces, from, angleRad, sign, radiusM, topShare, 0, false, power);
    }

    @Override
    public double[] start() {
        Vec p = from.place();
        return new double[] {p.x(), p.y(), p.z(), from.speedMps(), 0};
    }

    @Override
    public void rates(double t, double[] y, double[] dy) {
        double c = Math.cos(y[4]);
        double s = sign * Math.sin(y[4]);
        Vec d = from.direction();
        Vec u = from.up();
        double tx = c * d.x() + s * u.x();
        double ty = c * d.y() + s * u.y();
        double tz = c * d.z() + s * u.z();
        double uz = c * u.z() - s * d.z();
        double v = y[3];
        double over = v;
        if (radiusM > 0) {
            over = forces.hold(y, v, tx, ty, tz, dy);
        } else {
            forces.move(y, v, tx, ty, tz, dy);
        }
        double felt = felt(y[2], v, over, uz);
        double across = acrossMps2(felt);
        double climb = tz * Forces.share(over, v);
        dy[3] = forces.alongMps2(y[2], v, tx, ty, climb, across, power, 0);
        dy[4] = sign * Units.G_MPS2 * (felt - uz) / Math.max(over, 1);
    }

    /** Speed along the path that is bent, m/s: over the ground for a radius, through the air for a load. */
    private double pathMps(double zM, double v, double tx, double ty) {
        return radiusM > 0 ? forces.overGroundMps(zM, v, tx, ty) : v;
    }

    private double acrossMps2(double felt) {
        double lifting = Units.G_MPS2 * felt;
        return Math.sqrt(lifting * lifting + sideMps2 * sideMps2);
    }

    private double asked(double pathMps, double uz) {
        return radiusM > 0 ? sign * pathMps * pathMps / (Units.G_MPS2 * radiusM(uz)) + uz : loadG;
    }

    /** Radius where the pilot's up has this part upwards, metres. */
    private double radiusM(double uz) {
        return radiusM * shape.radius(sign * uz);
    }

    private double felt(double zM, double v, double pathMps, double uz) {
        return forces.capG(forces.rho(zM), v, asked(pathMps, uz));
    }

    @Override
    public double end(double t, double[] y) {
        return y[4] - angleRad;
    }

    @Override
    public boolean outOfSpeed(double t, double[] y) {
        double uz = upZ(y[4]);
        double c = Math.cos(y[4]);
        double s = sign * Math.sin(y[4]);
        double over = pathMps(
                y[2],
                y[3],
                c * from.direction().x() + s * from.up().x(),
                c * from.direction().y() + s * from.up().y());
        return y[3] < 3 || sign * (felt(y[2], y[3], over, uz) - uz) < 0.02;
    }

    private double upZ(double theta) {
        return Math.cos(theta) * from.up().z()
                - sign * Math.sin(theta) * from.direction().z();
    }

    @Override
    public void look(double t, double[] y, Look look) {
        double c = Math.cos(y[4]);
        double s = sign * Math.sin(y[4]);
        Vec d = from.direction();
        Vec u = from.up();
        look.direction(c * d.x() + s * u.x(), c * d.y() + s * u.y(), c * d.z() + s * u.z());
        look.up(c * u.x() - s * d.x(), c * u.y() - s * d.y(), c * u.z() - s * d.z());
        double over = pathMps(y[2], y[3], look.tx, look.ty);
        double felt = felt(y[2], y[3], over, look.uz);
        forces.see(y[2], y[3], acrossMps2(felt), power, 0, look);
        look.load(felt, atLimit ? felt : asked(over, look.uz));
    }

    @Override
    public FlightState after(double tS, double t, double[] y) {
        double c = Math.cos(y[4]);
        double s = sign * Math.sin(y[4]);
        Vec d = from.direction().times(c).plus(from.up().times(s));
        Vec u = from.up().times(c).plus(from.direction().times(-s));
        return new FlightState(
                tS,
                new Vec(y[0], y[1], y[2]),
                y[3],
                d.unit(),
                u.across(d.unit()).unit());
    }
}
