package crowdline.flight;

import crowdline.measure.Units;

/**
 * Flown as a pilot comes round for the next run: a steady bank or wings level, a gentle climb or descent towards a
 * height, the throttle set for a speed.
 *
 * <p>The path angle follows the height still to go with a time constant; the throttle gives what the wanted speed change
 * needs, between idle and full. Coordinates: x, y, z, airspeed, heading (counter-clockwise from the A-axis), path angle.
 */
final class GuidedLeg implements Leg {
    /** Where to and how. Bank is signed: positive turns the heading counter-clockwise, that is to the left. */
    record Aim(double heightM, double speedMps, double bankRad, double mostPower) {}

    private static final double STEEPEST_RAD = Math.toRadians(20);
    private static final double HEIGHT_S = 5;
    private static final double PATH_S = 1.2;
    private static final double SPEED_S = 3;

    private final Forces forces;
    private final FlightState from;
    private final Aim aim;
    private final StraightLeg.EndLaw end;
    private final boolean levelAtEnd;
    private final double tanBank;

    GuidedLeg(Forces forces, FlightState from, Aim aim, StraightLeg.EndLaw end, boolean levelAtEnd) {
        this.forces = forces;
        this.from = from;
        this.aim = aim;
        this.end = end;
        this.levelAtEnd = levelAtEnd;
        tanBank = Math.tan(aim.bankRad());
    }

    @Override
    public double[] start() {
        Vec p = from.place();
        return new double[] {
            p.x(),
            p.y(),
            p.z(),
            from.speedMps(),
            from.headingRad(),
            Math.asin(from.direction().z())
        };
    }

    @Override
    public void rates(double t, double[] y, double[] dy) {
        double cg = Math.cos(y[5]);
        double tz = Math.sin(y[5]);
        double tx = cg * Math.cos(y[4]);
        double ty = cg * Math.sin(y[4]);
        double v = Math.max(y[3], 1);
        double over = forces.overGroundMps(y[2], v, tx, ty);
        forces.hold(y, v, over, tx, ty, tz, dy);
        dy[3] = alongMps2(y, v, tx, ty, tz * Forces.share(over, v));
        dy[4] = Units.G_MPS2 * tanBank * over / (v * v);
        dy[5] = pathRate(y, v);
    }

    private double pathRate(double[] y, double v) {
        double wanted = (aim.heightM() - y[2]) / (HEIGHT_S * v);
        double steepest = Math.sin(STEEPEST_RAD);
        double path = Math.asin(Math.min(Math.max(wanted, -steepest), steepest));
        return (path - y[5]) / PATH_S;
    }

    /** What holds the weight and bends the path upward, g; negative where it is pushed over. */
    private double liftingG(double[] y, double v) {
        return Math.cos(y[5]) + v * pathRate(y, v) / Units.G_MPS2;
    }

    /** What turns the heading, g, towards the inside of the bank. */
    private double turningG(double[] y) {
        return Math.cos(y[5]) * tanBank;
    }

    private double acrossMps2(double[] y, double v) {
        return Units.G_MPS2 * Math.hypot(liftingG(y, v), turningG(y));
    }

    private double alongMps2(double[] y, double v, double tx, double ty, double tz) {
        double across = acrossMps2(y, v);
        double idle = forces.alongMps2(y[2], v, tx, ty, tz, across, 0, 0);
        double full = forces.alongMps2(y[2], v, tx, ty, tz, across, aim.mostPower(), 0);
        double wanted = (aim.speedMps() - v) / SPEED_S;
        return Math.min(Math.max(wanted, idle), full);
    }

    @Override
    public double end(double t, double[] y) {
        return end.beyond(t, y);
    }

    @Override
    public boolean outOfSpeed(double t, double[] y) {
        return y[3] < 5;
    }

    @Override
    public void look(double t, double[] y, Look look) {
        double cg = Math.cos(y[5]);
        double v = Math.max(y[3], 1);
        Vec d = new Vec(cg * Math.cos(y[4]), cg * Math.sin(y[4]), Math.sin(y[5]));
        Vec level = Vec.UP.across(d).unit();
        // Banked towards the inside of the turn: left is counter-clockwise, and the left wing is −S.
        Vec up = level.turnedAbout(d, -aim.bankRad());
        look.direction(d.x(), d.y(), d.z());
        look.up(up.x(), up.y(), up.z());
        forces.see(y[2], v, acrossMps2(y, v), 0, 0, look);
        double along = alongMps2(y, v, d.x(), d.y(), d.z());
        look.thrustN = Math.max(look.thrustN, forces.body.massKg() * (along + Units.G_MPS2 * d.z()) + look.dragN);
        double asked = liftingG(y, v) * Math.cos(aim.bankRad()) + turningG(y) * Math.sin(aim.bankRad());
        look.load(forces.capG(look.rhoKgM3, v, asked), asked);
        look.keptAnyway = true;
    }

    @Override
    public FlightState after(double tS, double t, double[] y) {
        double cg = levelAtEnd ? 1 : Math.cos(y[5]);
        double tz = levelAtEnd ? 0 : Math.sin(y[5]);
        Vec d = new Vec(cg * Math.cos(y[4]), cg * Math.sin(y[4]), tz);
        return new FlightState(
                tS, new Vec(y[0], y[1], y[2]), y[3], d, Vec.UP.across(d).unit());
    }

    @Override
    public double longestS() {
        return 120;
    }
}
