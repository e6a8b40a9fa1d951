package crowdline.follow;

import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import java.util.SplittableRandom;

/**
 * The aircraft of the trials: a point mass of its own, not the predictor's. Thrust falls in a straight line with speed,
 * the polar is shifted, loads build up with a lag, the power too, gusts blow, and it is stepped with the plain method of
 * Euler at a hundredth of a second.
 */
final class Aircraft {
    static final double DT = 0.01;
    static final double G = 9.80665;
    /** Nobody flies lower on purpose, before the landing. */
    static final double LOWEST_M = 50;
    /** The slope to which the nose is lowered where the speed goes. */
    static final double SLOW_SLOPE = -0.15;

    private static final double SLOW_STALLS = 1.25;
    /** Nobody flies level slower than this. */
    private static final double SLOWEST_STALLS = 1.1;
    /** A line steeper than this is meant to lose its speed. */
    private static final double STEEP = 0.45;

    private static final double RHO = 1.2;
    private static final double POWER_LAG_S = 0.7;
    private static final int EVERY = 5;

    final Airframe airframe;
    private final Truth truth;
    private final SplittableRandom random;
    private final double massKg;
    private final double powerW;
    private final double discM2;
    private final double cd0;
    private final V3 wind;
    private final double gustMps;
    private final double loadLagS;
    private V3 gust = new V3(0, 0, 0);
    private int steps;

    double tS;
    V3 place;
    double speedMps;
    V3 direction;
    V3 up = V3.UP;
    double load = 1;
    double power = 1;

    Aircraft(Airframe airframe, Variety variety, V3 wind, Sky sky, Truth truth, SplittableRandom random) {
        this.airframe = airframe;
        this.truth = truth;
        this.random = random;
        this.wind = wind;
        gustMps = sky.gustMps();
        loadLagS = sky.pullLagS();
        massKg = airframe.massKg() * variety.mass();
        boolean turns = airframe.engine() instanceof Engine.Propeller;
        powerW = turns ? ((Engine.Propeller) airframe.engine()).powerKw() * 1000 * variety.power() : 0;
        discM2 = turns ? Math.PI * Math.pow(((Engine.Propeller) airframe.engine()).diameterM() / 2, 2) : 0;
        cd0 = airframe.zeroLiftDrag() * variety.drag();
        place = new V3(0, 0, 0);
        direction = new V3(1, 0, 0);
    }

    double stallMps() {
        return Math.sqrt(2 * massKg * G / (RHO * airframe.wingAreaM2() * airframe.maxLiftUpright()));
    }

    double limited(double g) {
        double q = 0.5 * RHO * speedMps * speedMps * airframe.wingAreaM2() / (massKg * G);
        return g > 0
                ? Math.min(g, Math.min(q * airframe.maxLiftUpright(), airframe.limitPositiveG()))
                : Math.max(g, -q * airframe.maxLiftInverted());
    }

    /** What a pull-out from this dive takes to end at the lowest height; 0 when not diving. */
    private double pullOutG() {
        double level = Math.sqrt(Math.max(0, 1 - direction.z() * direction.z()));
        return direction.z() >= 0
                ? 0
                : level + speedMps * speedMps * (1 - level) / (G * Math.max(place.z() - LOWEST_M, 5));
    }

    /** Too low on a line down: a pilot pulls whatever the plan says. */
    boolean mustPullOut() {
        double gamma = Math.asin(Math.max(-1, Math.min(1, direction.z())));
        if (gamma > -0.15) {
            return false;
        }
        double radius = speedMps * speedMps / (2.6 * G);
        return place.z() < LOWEST_M + radius * (1 - Math.cos(gamma)) && speedMps > 20;
    }

    /** Nobody flies slower on purpose, but where there is no height to give up. */
    boolean isSlow() {
        return speedMps < SLOW_STALLS * stallMps() && place.z() > LOWEST_M;
    }

    /** Too slow and too low to go on along a level line: a glider dragged its last pass on at half its stalling speed. */
    boolean mustLand() {
        return speedMps < SLOWEST_STALLS * stallMps() && place.z() < LOWEST_M + 20;
    }

    /** On a line that is not steep nobody waits until the speed is gone. */
    boolean mustLowerNose() {
        return isSlow() && direction.z() > SLOW_SLOPE && direction.z() < STEEP;
    }

    boolean outOfSpeed() {
        return direction.z() > 0.3 && speedMps < 8;
    }

    double tightest() {
        double q = 0.5 * RHO * speedMps * speedMps * airframe.wingAreaM2() / (massKg * G);
        return Math.min(q * airframe.maxLiftUpright(), airframe.limitPositiveG());
    }

    private double thrustN() {
        if (airframe.engine() instanceof Engine.Jet jet) {
            return 1000 * jet.thrustKn() * (1 - speedMps / 1000);
        }
        // Straight line: as a propeller of 78 % at 50 m/s, and a third more at rest than a constant power would tell.
        return Math.max(0, 0.78 * powerW / 50 * (1.75 - 0.75 * speedMps / 50));
    }

    /** A propeller the air turns; the glides of a four-seat trainer's handbook give 0.09 to 0.12 on its disc. */
    private double idleDragN() {
        return 0.11 * discM2 * 0.5 * RHO * speedMps * Math.abs(speedMps);
    }

    private double dragN(double g, double extraCd) {
        double qs = 0.5 * RHO * Math.max(speedMps * speedMps, 1) * airframe.wingAreaM2();
        double cl = Math.min(Math.abs(g) * massKg * G / qs, airframe.maxLiftUpright());
        double k = airframe.inducedDragFactor() * 0.95;
        return qs * (cd0 + extraCd + k * (cl - 0.08) * (cl - 0.08));
    }

    /**
     * One step in which the load is asked for along the pilot's up; what would pull the path sideways is held. A pilot who
     * pulls out too low pulls harder.
     */
    void curve(double askedG, double askedPower) {
        double wanted = askedG > 1 && up.z() > 0 ? Math.max(askedG, limited(pullOutG())) : askedG;
        load += (wanted - load) * DT / loadLagS;
        along(load, askedPower, 0);
        double bend = (load * G - G * up.z()) / Math.max(speedMps, 10);
        turnTowards(up, bend * DT);
    }

    /** One step straight on. */
    void straight(double askedPower, double extraCd) {
        double across = Math.sqrt(Math.max(0, 1 - direction.z() * direction.z()));
        load += (across * Math.signum(up.z() + 1e-9) - load) * DT / loadLagS;
        along(across, askedPower, extraCd);
    }

    private void along(double g, double askedPower, double extraCd) {
        power += (askedPower - power) * DT / POWER_LAG_S;
        double a = (power * thrustN() - (1 - power) * idleDragN() - Math.signum(speedMps) * dragN(g, extraCd)) / massKg
                - G * direction.z();
        speedMps = Math.max(speedMps + a * DT, -30);
        move(direction.times(speedMps));
    }

    void turnTowards(V3 side, double rad) {
        V3 axis = direction.cross(side).unit();
        direction = direction.turned(axis, rad).unit();
        up = up.turned(axis, rad).across(direction).unit();
    }

    /** Points it somewhere, with the pilot's up as near as may be. */
    void point(V3 newDirection, V3 newUp) {
        direction = newDirection.unit();
        up = newUp.across(direction).unit();
    }

    void roll(double rad) {
        up = up.turned(direction, rad).across(direction).unit();
    }

    /** Moves it through the air by a velocity, and the air with it. */
    void move(V3 airMps) {
        double keep = 1 - DT / 3;
        double kick = gustMps * Math.sqrt(2 * DT / 3);
        gust = gust.times(keep)
                .plus(new V3(
                        random.nextGaussian() * kick, random.nextGaussian() * kick, random.nextGaussian() * kick / 2));
        ground(airMps.plus(wind).plus(gust));
    }

    /** Moves it over the ground by a velocity. */
    void ground(V3 ground) {
        place = place.plus(ground.times(DT));
        tS += DT;
        if (steps++ % EVERY == 0) {
            truth.instants.add(new Truth.Instant(tS, place, ground));
        }
    }
}
