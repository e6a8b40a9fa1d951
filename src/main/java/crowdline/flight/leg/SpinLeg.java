package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.figure.SpinKind;

/**
 * A spin: from the stall the nose drops, rotation builds up to the airframe's rate and the sink to its settled speed.
 *
 * <p>The sink approaches the airframe's descent per turn as a fall with drag does; rotation grows with a time constant
 * of 0.7 s (tuned: about half a turn to settle). A flat spin goes round a third faster and down a quarter slower than an
 * upright one of the same airframe (common practice, no source). The load felt is the upward force over weight: about 1
 * when settled, as the Pilot's Handbook says of spins (FAA-H-8083-25C, ch. 5).
 *
 * <p>Coordinates: x, y, z, three velocities through the air, angle turned.
 */
final class SpinLeg implements Leg {
    private static final double SETTLING_S = 0.7;

    private final Forces forces;
    private final FlightState from;
    private final int side;
    private final double angleRad;
    private final double rateRadPerS;
    private final double sinkMps;
    private final double noseDownRad;
    private final int canopy;
    private final Vec heading;

    SpinLeg(Forces forces, FlightState from, SpinKind kind, int side, double turns) {
        this.forces = forces;
        this.from = from;
        this.side = side;
        angleRad = 2 * Math.PI * turns;
        boolean flat = kind.isFlat();
        rateRadPerS = forces.body.spinRateRadPerS() * (flat ? 4.0 / 3 : 1);
        sinkMps = forces.body.spinSinkMps() * (flat ? 0.75 : 1);
        noseDownRad = Math.toRadians(flat ? 20 : 60);
        canopy = kind.isInverted() ? -1 : 1;
        double h = from.headingRad();
        heading = new Vec(Math.cos(h), Math.sin(h), 0);
    }

    @Override
    public double[] start() {
        Vec p = from.place();
        Vec v = from.direction().times(from.speedMps());
        return new double[] {p.x(), p.y(), p.z(), v.x(), v.y(), v.z(), 0};
    }

    @Override
    public void rates(double t, double[] y, double[] dy) {
        dy[0] = y[3];
        dy[1] = y[4];
        dy[2] = y[5];
        forces.drift(y[2], dy);
        double brake = brakePerS(y);
        dy[3] = -brake * y[3];
        dy[4] = -brake * y[4];
        dy[5] = -brake * y[5] - Units.G_MPS2;
        dy[6] = rateRadPerS * (1 - Math.exp(-t / SETTLING_S));
    }

    private double brakePerS(double[] y) {
        double speed = Math.sqrt(y[3] * y[3] + y[4] * y[4] + y[5] * y[5]);
        return Units.G_MPS2 * speed / (sinkMps * sinkMps);
    }

    @Override
    public double end(double t, double[] y) {
        return y[6] - angleRad;
    }

    private Vec facing(double angle) {
        return heading.turnedAbout(Vec.UP, -side * angle);
    }

    @Override
    public void look(double t, double[] y, Look look) {
        double down = noseDownRad * (1 - Math.exp(-t / SETTLING_S));
        Vec facing = facing(y[6]);
        Vec nose = facing.times(Math.cos(down)).plus(Vec.DOWN.times(Math.sin(down)));
        Vec up = facing.times(Math.sin(down)).plus(Vec.UP.times(Math.cos(down))).times(canopy);
        look.direction(nose.x(), nose.y(), nose.z());
        look.up(up.x(), up.y(), up.z());
        look.speedMps = Math.sqrt(y[3] * y[3] + y[4] * y[4] + y[5] * y[5]);
        look.rhoKgM3 = forces.rho(y[2]);
        look.thrustN = 0;
        double brake = brakePerS(y) * look.speedMps;
        look.dragN = forces.body.massKg() * brake;
        double g = canopy * brake / Units.G_MPS2;
        look.load(g, g);
        look.stalledOnPurpose = true;
    }

    /** Pointing straight down; pulling out would bring it level where it faced last. */
    @Override
    public FlightState after(double tS, double t, double[] y) {
        return new FlightState(
                tS,
                new Vec(y[0], y[1], y[2]),
                Math.max(-y[5], 0),
                Vec.DOWN,
                facing(y[6]).times(canopy));
    }

    @Override
    public int looksPerSample() {
        return 2;
    }
}
