package crowdline.trace;

import crowdline.flight.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A mass that is pulled, pushed, rolled and turned by hand, and gains and loses speed with height: display flights that
 * owe nothing to the flight computed elsewhere.
 */
final class PointMass {
    private static final double DT = 0.05;
    private static final double G = 9.81;

    /**
     * What flies.
     *
     * @param mps at which it enters a loop
     * @param slowMps at which it stalls
     * @param g it pulls in a loop
     * @param push full power less drag at half of {@code mps}, m/s²
     * @param rollDegPerS how fast it rolls
     */
    record Machine(String kind, double mps, double slowMps, double g, double push, double rollDegPerS) {}

    final Machine machine;
    final SplittableRandom random;
    /** Time, then place in metres, each 0.05 s. */
    final List<double[]> instants = new ArrayList<>();

    private final Vec wind;
    private double tS;
    Vec at;
    Vec way;
    /** Where a pull leads. */
    Vec up = new Vec(0, 0, 1);

    double mps;
    private double gust;

    PointMass(Machine machine, SplittableRandom random, double windMps) {
        this.machine = machine;
        this.random = random;
        double from = 2 * Math.PI * random.nextDouble();
        double heading = 2 * Math.PI * random.nextDouble();
        wind = new Vec(windMps * Math.cos(from), windMps * Math.sin(from), 0);
        at = new Vec(-500 + 1000 * random.nextDouble(), 300, 250 + 100 * random.nextDouble());
        way = new Vec(Math.cos(heading), Math.sin(heading), 0);
        mps = machine.mps;
        keep();
    }

    double tS() {
        return tS;
    }

    /** About one, by so much more or less. */
    double about(double share) {
        return Math.exp(share * Math.max(-2, Math.min(2, random.nextGaussian())));
    }

    private void keep() {
        instants.add(new double[] {tS, at.x(), at.y(), at.z()});
    }

    /** A step with so much acceleration to where a pull leads, against nothing. */
    private void step(double pullMps2, double power, double brake) {
        gust = 0.98 * gust + 0.15 * random.nextGaussian();
        double v = Math.max(mps, 3);
        way = way.plus(up.times((pullMps2 + 0.3 * gust) * DT / v)).unit();
        up = up.minus(way.times(up.dot(way))).unit();
        double lift = pullMps2 / G + up.z();
        double q = mps / (0.5 * machine.mps);
        double top = 1.25 * machine.mps / (0.5 * machine.mps);
        double thrust = power * machine.push * (1 - Math.pow(q / top, 2)) / (1 - 1 / (top * top));
        double induced = 0.4 * lift * lift / Math.max(q * q, 0.3);
        mps = Math.max(
                1,
                mps
                        + (thrust
                                        - (power < 0.3 ? 0.2 * G * q * q / 4 + 0.5 : 0)
                                        - 0.25 * induced
                                        - brake
                                        - G * way.z())
                                * DT);
        at = at.plus(way.times(mps * DT)).plus(wind.times(DT));
        tS += DT;
        keep();
    }

    /** As of one that falls rather than flies. */
    private void fall(Vec speed) {
        at = at.plus(speed.plus(wind).times(DT));
        tS += DT;
        keep();
    }

    void line(double seconds, double power) {
        for (double t = 0; t < seconds; t += DT) {
            step(0, power, 0);
        }
    }

    void lineToSpeed(double target, double power) {
        double end = tS + 25;
        boolean slower = mps > target;
        while (tS < end && (slower ? mps > target : mps < target) && at.z() > 60) {
            step(0, power, 0);
        }
    }

    void lineToHeight(double heightM, double power) {
        double end = tS + 30;
        boolean down = at.z() > heightM;
        while (tS < end && (down ? at.z() > heightM : at.z() < heightM) && mps > 0.7 * machine.slowMps) {
            step(0, power, 0);
        }
    }

    /** Through an angle; g as it would be at the speed of entering. */
    void pull(double degrees, double g, double power) {
        double left = Math.toRadians(degrees);
        double strong = 0;
        while (left > 0) {
            strong = Math.min(1, strong + DT / 0.5);
            double a = strong * Math.abs(g - 1) * G * Math.pow(Math.max(mps, 0.3 * machine.mps) / machine.mps, 1.3);
            a = a * about(0.03) + 0.8 * G * Math.max(0, -up.z() * Math.signum(g));
            Vec before = way;
            step(Math.signum(g) * a, power, 0);
            left -= Math.acos(Math.max(-1, Math.min(1, before.dot(way))));
        }
    }

    /** Until it climbs so steeply, or as nearly so as this plane leads. */
    void pullTo(double climbDeg, double g, double power) {
        double wanted = Math.sin(Math.toRadians(climbDeg));
        double side = up.z() * Math.signum(g);
        double best = 0;
        for (int by = 1; by <= 300; by++) {
            double before = way.z() * Math.cos(Math.toRadians(by - 1)) + side * Math.sin(Math.toRadians(by - 1));
            double after = way.z() * Math.cos(Math.toRadians(by)) + side * Math.sin(Math.toRadians(by));
            if ((before - wanted) * (after - wanted) <= 0) {
                best = by;
                break;
            }
        }
        pull(best, g, power);
    }

    void roll(double degrees, double rate, double power) {
        double left = Math.abs(degrees);
        while (left > 0) {
            double by = Math.min(left, rate * DT);
            turnUp(Math.signum(degrees) * by);
            left -= by;
            step(0, power, 0);
        }
    }

    void turnUp(double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        Vec side = way.cross(up);
        up = up.times(c).plus(side.times(s)).unit();
    }

    void level() {
        Vec flat = new Vec(way.x(), way.y(), 0);
        way = flat.length() > 0.01 ? flat.unit() : new Vec(up.x(), up.y(), 0).unit();
        up = new Vec(0, 0, 1);
    }

    /** Turns, to the left where degrees are above 0, with a climb that is most at the middle or throughout. */
    void turn(double degrees, double bankDeg, double peakClimbDeg, boolean keepsClimb, double power) {
        level();
        double through = Math.toRadians(Math.abs(degrees));
        double turned = 0;
        double heading = Math.atan2(way.y(), way.x());
        double bank = 0;
        double wobble = 0;
        while (turned < through) {
            bank = Math.min(bankDeg, bank + machine.rollDegPerS * 0.5 * DT);
            double left = Math.toDegrees(through - turned);
            double used = left < 10 ? Math.max(25, bank * left / 10) : bank;
            double rate = G * Math.tan(Math.toRadians(used)) / Math.max(mps, machine.slowMps);
            turned += rate * DT;
            double share = Math.min(1, turned / through);
            wobble = 0.97 * wobble + 0.12 * random.nextGaussian();
            double climb = Math.toRadians(peakClimbDeg
                            * (keepsClimb
                                    ? Math.min(1, 4 * Math.min(share, 1 - share))
                                    : Math.sin(2 * Math.PI * share)))
                    + Math.toRadians(peakClimbDeg == 0 ? wobble : 0);
            double h = heading + Math.signum(degrees) * turned;
            way = new Vec(Math.cos(h) * Math.cos(climb), Math.sin(h) * Math.cos(climb), Math.sin(climb));
            up = new Vec(0, 0, 1).minus(way.times(way.z())).unit();
            step(0, power, 0.25 * 0.4 * (Math.pow(1 / Math.cos(Math.toRadians(used)), 2) - 1));
        }
        level();
    }

    void barrel(double seconds, double side) {
        Vec ahead = way;
        Vec across = new Vec(-way.y(), way.x(), 0).times(side);
        for (double t = 0; t < seconds; t += DT) {
            double phi = 2 * Math.PI * t / seconds;
            way = ahead.plus(new Vec(0, 0, 1).times(0.55 * Math.sin(phi)))
                    .plus(across.times(0.3 * (1 - Math.cos(phi))))
                    .unit();
            up = new Vec(0, 0, 1).minus(way.times(way.z())).unit();
            step(0, 0.9, 0);
        }
        way = ahead;
        level();
    }

    /** Up to a stop, over, and straight down. */
    void over(double seconds) {
        double end = tS + 15;
        while (mps > 0.25 * machine.slowMps && tS < end) {
            step(0, 1, 0);
        }
        double v = mps;
        for (double t = 0; t < seconds; t += DT) {
            v -= 0.8 * G * DT;
            fall(new Vec(0, 0, v));
        }
        mps = Math.max(3, -v);
        Vec out = up;
        way = new Vec(0, 0, -1);
        up = out;
    }

    void spin(double turns, double secondsATurn, double sinkMps) {
        lineToSpeed(machine.slowMps, 0);
        Vec heading = way;
        Vec v = way.times(mps);
        double seconds = turns * secondsATurn;
        for (double t = 0; t < seconds && at.z() > 120; t += DT) {
            double share = Math.min(1, t / 2.5);
            double phi = 2 * Math.PI * t / secondsATurn;
            Vec round = new Vec(4 * Math.cos(phi), 4 * Math.sin(phi), -sinkMps);
            v = heading.times(mps * (1 - share)).plus(round.times(share));
            fall(v);
        }
        mps = sinkMps;
        way = new Vec(0, 0, -1);
        up = heading;
        lineToSpeed(1.7 * machine.slowMps, 0.2);
        pullTo(0, 3.5, 0.7);
        level();
    }

    void flick(double seconds) {
        double end = tS + seconds;
        while (tS < end) {
            step(-2 + 4 * random.nextDouble(), 0.7, 6);
        }
        level();
    }
}
