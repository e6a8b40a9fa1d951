package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.NoDrive;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;

/**
 * Flown as a pilot comes round for the next run: a bank or wings level, a gentle climb or descent towards a
 * height, the throttle set for a speed.
 *
 * <p>The path angle follows the height still to go with a time constant; the throttle gives what the wanted speed change
 * needs, between idle and full. Coordinates: x, y, z, airspeed, heading (counter-clockwise from the A-axis), path angle.
 */
final class GuidedLeg implements Leg {
    /** Where to and how; {@code awayM} is the line that {@code alongLine} keeps. Bank is signed: positive turns the heading counter-clockwise, that is to the left. */
    record Aim(double heightM, double speedMps, double bankRad, double mostPower, boolean alongLine, double awayM) {
        Aim(double heightM, double speedMps, double bankRad, double mostPower) {
            this(heightM, speedMps, bankRad, mostPower, false, 0);
        }
    }

    private static final double STEEPEST_RAD = Math.toRadians(20);
    /** The same down from far above, while it has not the speed it comes down for. */
    private static final double STEEPEST_DOWN_RAD = Math.toRadians(45);
    /** The same up with power and its wings level. */
    private static final double STEEPEST_UP_RAD = Math.toRadians(45);
    /** From so much higher than it comes down in these seconds it dives more steeply. */
    private static final double DIVES_S = 12;

    /** Longer than any way within sight takes, whatever the wind that is flown in: what does not end by then never does. */
    private static final double LONGEST_S = 600;

    private static final double HEIGHT_S = 5;
    private static final double PATH_S = 1.2;
    /** With so much of the wanted speed to spare it comes to a height above it twice as soon; by judgement. */
    private static final double SPARE = 0.1;

    private static final double SPEED_S = 3;
    /** Share of the wing's lift that a turn uses at most. */
    private static final double SHARE_OF_WING = 0.75;
    /** The least load of a turn, g: a gentle bank is always carried. */
    private static final double LEAST_G = 1.05;
    /** Of what the airframe takes, what is used between figures. */
    private static final double SHARE_OF_LIMIT = 0.9;
    /** Nobody is pushed harder against the straps between figures, g; by judgement. */
    private static final double HARDEST_PUSH_G = -1;
    /** Of the never-exceed speed, where a dive is held that would go on to it. */
    private static final double SHARE_OF_NEVER_EXCEED = 0.95;
    /** Sine of the path down for each part of that speed there is to go. */
    private static final double HEIGHT_FOR_SPEED = 1.5;
    /** The same for each part of the wanted speed that is missing. */
    private static final double DIVE_FOR_SPEED = 2;
    /** Sine of the path for each part of the wanted speed there is to spare. */
    private static final double SPEED_FOR_HEIGHT = 0.4;

    private static final double SPEED_FOR_HEIGHT_LEVEL = 1;
    private static final double SPEED_FOR_HEIGHT_GLIDING = 1.2;

    /** How soon it is back on the display line, seconds. */
    private static final double LINE_S = 5;

    private static final double HEADING_S = 1.5;
    private static final double MOST_OFF_RAD = Math.toRadians(35);
    /** Share of the gentle bank that its approach leaves for the turn on to it. */
    private static final double EASY = 0.75;

    private static final double GENTLE_TAN = Math.tan(Math.toRadians(40));

    private final Forces forces;
    private final FlightState from;
    private final Aim aim;
    private final StraightLeg.EndLaw end;
    private final boolean levelAtEnd;
    private final double steepestTan;
    private final boolean gliding;
    /** Whether it pulls up for a height, as it does with power and its wings level. */
    private final boolean pullsUp;

    // The instant that is looked at, written over and over.
    private double cosPath;
    private double sinPath;
    private double cosHeading;
    private double sinHeading;
    private double v;
    private double rho;
    /** Thrust with all the power there may be, N. */
    private double fullN;

    private double mostG;
    /** Of the bank: the one wanted, as far as the wing carries it with something in hand. */
    private double tan;
    /** What a level turn at that bank takes across the path, m/s². */
    private double levelMps2;

    GuidedLeg(Forces forces, FlightState from, Aim aim, StraightLeg.EndLaw end, boolean levelAtEnd) {
        this.forces = forces;
        this.from = from;
        this.aim = aim;
        this.end = end;
        this.levelAtEnd = levelAtEnd;
        steepestTan = Math.tan(aim.bankRad());
        gliding = aim.mostPower() == 0 || forces.body.drive() instanceof NoDrive;
        pullsUp = !gliding && aim.bankRad() == 0;
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

    /** Finds everything about an instant that is asked for more than once. */
    private void at(double[] y) {
        cosPath = Math.cos(y[5]);
        sinPath = Math.sin(y[5]);
        cosHeading = Math.cos(y[4]);
        sinHeading = Math.sin(y[4]);
        v = Math.max(y[3], 1);
        rho = forces.rho(y[2]);
        fullN = forces.body.drive().thrustN(v, rho, aim.mostPower());
        mostG = mostG(forces, rho, v);
        double wanted = aim.alongLine() ? towardsLine(y) : steepestTan;
        tan = carriedTan(mostG, wanted);
        levelMps2 = Units.G_MPS2 * Math.sqrt(1 + tan * tan);
    }

    @Override
    public void rates(double t, double[] y, double[] dy) {
        at(y);
        double over = forces.hold(y, v, cosPath * cosHeading, cosPath * sinHeading, sinPath, dy);
        double rate = pathRate(y);
        dy[3] = alongMps2(y, sinPath * Forces.share(over, v), acrossMps2(rate));
        dy[4] = Units.G_MPS2 * tan * over / (v * v);
        dy[5] = rate;
    }

    private double pathRate(double[] y) {
        double up = aim.heightM() - y[2];
        double sooner = pullsUp && up > 0 ? Math.max(0, Math.min(spare() / SPARE, 1)) : 0;
        double wanted = (1 + sooner) * up / (HEIGHT_S * v);
        double path = Math.asin(Math.min(Math.max(wanted, steepestDown(y)), steepestUp(y)));
        double room = Math.sqrt(Math.max(mostG * mostG - tan * tan, LEAST_G * LEAST_G)) - 1;
        double fastest = Units.G_MPS2 * room / v;
        double push = Math.max(HARDEST_PUSH_G, SHARE_OF_LIMIT * forces.body.limitNegativeG());
        double soonestDown = Units.G_MPS2 * (push - cosPath) / v;
        return Math.max(Math.min((path - y[5]) / PATH_S, fastest), soonestDown);
    }

    /** Sine of the steepest path down, less steep where the speed would come near the one that is never exceeded. */
    private double steepestDown(double[] y) {
        double steepest = -Math.max(Math.sin(STEEPEST_RAD), diving(y));
        double most = SHARE_OF_NEVER_EXCEED * forces.body.neverExceedMps();
        double toGo = HEIGHT_FOR_SPEED * (most - v) / most;
        if (toGo > -steepest) {
            return steepest;
        }
        double idle = gainsMps2(y, forces.body.drive().thrustN(v, rho, 0)) / Units.G_MPS2;
        return Math.min(Math.max(idle - toGo, steepest), 0);
    }

    /** Sine of a dive from far above; less of it the nearer its speed is to the one wanted, and none from there on. */
    private double diving(double[] y) {
        double down = Math.min((y[2] - aim.heightM()) / (DIVES_S * v), Math.sin(STEEPEST_DOWN_RAD));
        double toGo = DIVE_FOR_SPEED * (aim.speedMps() - v) / aim.speedMps();
        return Math.min(down, Math.sin(STEEPEST_RAD) + toGo);
    }

    /**
     * Sine of the steepest climb that keeps the speed, with more of it while there is speed to spare, and steeper with wings
     * level; a glider sinks, and dives for speed it does not have.
     */
    private double steepestUp(double[] y) {
        double steepest = Math.sin(pullsUp ? STEEPEST_UP_RAD : STEEPEST_RAD);
        double excess = gainsMps2(y, fullN) / Units.G_MPS2;
        double forSpeed =
                gliding ? SPEED_FOR_HEIGHT_GLIDING : pullsUp && spare() > 0 ? SPEED_FOR_HEIGHT_LEVEL : SPEED_FOR_HEIGHT;
        double least = gliding ? -steepest : 0;
        return Math.min(Math.max(excess + forSpeed * spare(), least), steepest);
    }

    /** How much more speed it has than is wanted, as a share of that. */
    private double spare() {
        return (v - aim.speedMps()) / aim.speedMps();
    }

    /** How soon it would gain speed in a level turn at its bank, m/s². */
    private double gainsMps2(double[] y, double thrustN) {
        return forces.alongMps2(y[2], v, cosHeading, sinHeading, 0, thrustN, forces.drag(rho, v, levelMps2, 0));
    }

    /** What holds the weight and bends the path upward, g; negative where it is pushed over. */
    private double liftingG(double pathRate) {
        return cosPath + v * pathRate / Units.G_MPS2;
    }

    /** What turns the heading, g, towards the inside of the bank. */
    private double turningG() {
        return cosPath * tan;
    }

    /** Tangent of a bank as far as the wing carries it with something in hand, at a height and speed. */
    static double carriedTan(Forces forces, double zM, double v, double wanted) {
        return carriedTan(mostG(forces, forces.rho(zM), v), wanted);
    }

    private static double carriedTan(double mostG, double wanted) {
        double carried = Math.sqrt(mostG * mostG - 1);
        return Math.abs(wanted) <= carried ? wanted : Math.copySign(carried, wanted);
    }

    /** The most load that is used, g. */
    private static double mostG(Forces forces, double rho, double v) {
        double carried = SHARE_OF_WING * forces.capG(rho, v, 99);
        return Math.max(Math.min(carried, SHARE_OF_LIMIT * forces.body.limitPositiveG()), LEAST_G);
    }

    /** Tangent of a gentle bank that leads back on to the display line, and along it. */
    private double towardsLine(double[] y) {
        double way = from.direction().x() >= 0 ? 1 : -1;
        double line = way > 0 ? 0 : Math.PI;
        double off = Math.atan2(Math.sin(y[4] - line), Math.cos(y[4] - line));
        double asideM = y[1] - aim.awayM();
        // As steeply as a gentle bank still turns on to it, and slower and slower near it.
        double radiusM = v * v / (Units.G_MPS2 * GENTLE_TAN * EASY);
        double turnsOff = Math.acos(Math.max(1 - Math.abs(asideM) / radiusM, 0));
        double settles = Math.atan(Math.abs(asideM) / (v * LINE_S));
        double wantedOff = -way * Math.copySign(Math.min(turnsOff, settles), asideM);
        double capped = Math.min(Math.max(wantedOff, -MOST_OFF_RAD), MOST_OFF_RAD);
        double rate = (capped - off) / HEADING_S;
        double needed = rate * v / Units.G_MPS2;
        return Math.min(Math.max(needed, -GENTLE_TAN), GENTLE_TAN);
    }

    private double acrossMps2(double pathRate) {
        double lifting = liftingG(pathRate);
        double turning = turningG();
        return Units.G_MPS2 * Math.sqrt(lifting * lifting + turning * turning);
    }

    /** @param climb sine of the path that the speed is flown along */
    private double alongMps2(double[] y, double climb, double across) {
        double dragN = forces.drag(rho, v, across, 0);
        double tx = cosPath * cosHeading;
        double ty = cosPath * sinHeading;
        double idleN = forces.body.drive().thrustN(v, rho, 0);
        double idle = forces.alongMps2(y[2], v, tx, ty, climb, idleN, dragN);
        double full = forces.alongMps2(y[2], v, tx, ty, climb, fullN, dragN);
        return Math.min(Math.max(wantedMps(y) / SPEED_S, idle), full);
    }

    /** How much speed is to be gained, m/s; what there is to spare is not taken off while height is still to be had for it. */
    private double wantedMps(double[] y) {
        double missing = aim.speedMps() - v;
        double up = Math.max(aim.heightM() - y[2], 0);
        return gliding || missing > 0 ? missing : Math.min(missing + Units.G_MPS2 * up / v, 0);
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
        at(y);
        Vec d = new Vec(cosPath * cosHeading, cosPath * sinHeading, sinPath);
        Vec level = Vec.UP.across(d).unit();
        // Banked towards the inside of the turn: left is counter-clockwise, and the left wing is −S.
        double rate = pathRate(y);
        double across = acrossMps2(rate);
        double bank = Math.atan(tan);
        Vec up = level.turnedAbout(d, -bank);
        look.direction(d.x(), d.y(), d.z());
        look.up(up.x(), up.y(), up.z());
        forces.see(y[2], v, across, 0, 0, look);
        if (look.forForces) {
            double along = alongMps2(y, sinPath, across);
            look.thrustN = Math.max(look.thrustN, forces.body.massKg() * (along + Units.G_MPS2 * d.z()) + look.dragN);
        }
        double asked = liftingG(rate) * Math.cos(bank) + turningG() * Math.sin(bank);
        look.load(forces.capG(look.rhoKgM3, v, asked), asked);
        look.keptAnyway = true;
    }

    @Override
    public FlightState after(double tS, double t, double[] y) {
        double cg = levelAtEnd ? 1 : Math.cos(y[5]);
        double tz = levelAtEnd ? 0 : Math.sin(y[5]);
        Vec d = aim.alongLine()
                ? new Vec(from.direction().x() >= 0 ? 1 : -1, 0, 0)
                : new Vec(cg * Math.cos(y[4]), cg * Math.sin(y[4]), tz);
        return new FlightState(
                tS, new Vec(y[0], y[1], y[2]), y[3], d, Vec.UP.across(d).unit());
    }

    @Override
    public double longestS() {
        return LONGEST_S;
    }
}
