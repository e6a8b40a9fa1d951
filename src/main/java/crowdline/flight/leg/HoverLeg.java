package crowdline.flight.leg;

import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;

/**
 * Straight up on the propeller while its torque rolls the aircraft the other way round.
 *
 * <p>Roll acceleration is torque less damping over the moment of inertia about the long axis. Damping has a part that
 * goes with airspeed (Clp = −0.4, a usual value for straight wings; from memory) and a part from the wing beating the
 * air flat on at no airspeed. The radius of gyration in roll is 0.25 of the half span (usual for single-engined
 * propeller aeroplanes; from memory, Raymer, Aircraft Design). No aerodynamic control is assumed.
 *
 * <p>Coordinates: x, y, z, airspeed (negative when sliding back), roll angle, roll rate.
 */
final class HoverLeg implements Leg {
    private static final double CLP = 0.4;

    private final Forces forces;
    private final FlightState from;
    private final double seconds;
    private final double power;
    private final double inertiaKgM2;
    private final double beatingM5;

    HoverLeg(Forces forces, FlightState from, double seconds, double power) {
        this.forces = forces;
        this.from = from;
        this.seconds = seconds;
        this.power = power;
        Body body = forces.body;
        double halfSpan = body.spanM() / 2;
        double gyration = 0.25 * halfSpan;
        inertiaKgM2 = body.massKg() * gyration * gyration;
        double chord = body.areaM2() / body.spanM();
        // Two half wings, each the integral of r³ over the half span.
        beatingM5 = FallLeg.FLAT_CD * chord * Math.pow(halfSpan, 4) / 2;
    }

    @Override
    public double[] start() {
        Vec p = from.place();
        return new double[] {p.x(), p.y(), p.z(), from.speedMps(), 0, 0};
    }

    @Override
    public void rates(double t, double[] y, double[] dy) {
        Vec d = from.direction();
        forces.move(y, y[3], d.x(), d.y(), d.z(), dy);
        dy[3] = forces.alongMps2(y[2], y[3], d.x(), d.y(), d.z(), 0, power, 0);
        dy[4] = y[5];
        double rho = forces.rho(y[2]);
        Body body = forces.body;
        double flow = 0.25 * rho * Math.abs(y[3]) * body.areaM2() * body.spanM() * body.spanM() * CLP * y[5];
        double beating = 0.5 * rho * beatingM5 * y[5] * Math.abs(y[5]);
        dy[5] = (body.drive().torqueNm(rho, power) - flow - beating) / inertiaKgM2;
    }

    @Override
    public double end(double t, double[] y) {
        return t - seconds;
    }

    @Override
    public void look(double t, double[] y, Look look) {
        Vec d = from.direction();
        look.direction(d.x(), d.y(), d.z());
        look.up(from.rolledUp(y[4]));
        forces.see(y[2], y[3], 0, power, 0, look);
        look.load(0, 0);
        look.stalledOnPurpose = true;
    }

    @Override
    public FlightState after(double tS, double t, double[] y) {
        return from.rolled(tS, new Vec(y[0], y[1], y[2]), y[3], y[4]);
    }

    @Override
    public double dueS() {
        return seconds;
    }

    @Override
    public int looksPerSample() {
        return 2;
    }
}
