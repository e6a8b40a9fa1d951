package crowdline.follow;

import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;

/**
 * An aircraft moved by geometry and not by forces, so that it has nothing in common with the predictor or with
 * {@link Aircraft}: it draws circles and straight lines, its speed follows from its height with a loss and a gain, and the
 * aircraft itself lags behind the point that draws. A circle's radius is that of a level pull of so many g,
 * R = v²/(g (n − 1)), and a turn's R = v²/(g tan φ): any textbook of flight mechanics, from memory.
 */
final class PlainAircraft {
    static final double DT = 0.02;
    static final double G = 9.80665;
    private static final double SLOWEST_MPS = 8;
    /** Metres: nothing is drawn lower, before the landing. */
    private static final double LOWEST_M = 40;
    /** Share of the energy that is lost in each radian of a circle of one g, at 60 m/s. */
    private static final double LOSS = 0.02;

    final Airframe airframe;
    private final Truth truth;
    private final V3 wind;
    private final double lagS;
    private final double gainMps2;
    private final double fastestMps;
    private V3 flown;
    private int steps;
    double tS;
    V3 place = new V3(0, 0, 0);
    V3 way = new V3(1, 0, 0);
    V3 up = V3.UP;
    double mps;

    PlainAircraft(Airframe airframe, V3 wind, double lagS, double power, Truth truth) {
        this.airframe = airframe;
        this.wind = wind;
        this.lagS = lagS;
        this.truth = truth;
        gainMps2 = airframe.engine() instanceof Engine.None ? -G / 28 : power;
        fastestMps = 0.85 * airframe.neverExceedKt() * 1852 / 3600;
        flown = new V3(0, 0, 0);
    }

    void begin(V3 at, V3 heading, double speedMps) {
        place = at;
        way = heading.unit();
        mps = speedMps;
        flown = way.times(mps);
    }

    double stallMps() {
        return Math.sqrt(2 * airframe.massKg() * G / (1.2 * airframe.wingAreaM2() * airframe.maxLiftUpright()));
    }

    /** Radius of a circle pulled with so many g from this speed, metres. */
    double radiusM(double g) {
        return Math.max(25, mps * mps / (G * Math.max(g - 1, 0.8)));
    }

    /** One step along a circle of this radius towards a side; 0 for a straight line. */
    void step(V3 side, double radiusM) {
        double rad = radiusM == 0 ? 0 : mps * DT / radiusM;
        if (rad != 0) {
            V3 axis = way.cross(side).unit();
            way = way.turned(axis, rad).unit();
            up = up.turned(axis, rad).across(way).unit();
        }
        double gain = gainMps2 > 0 ? gainMps2 * (1 - mps * mps / (fastestMps * fastestMps)) : gainMps2;
        double loss = radiusM == 0 ? 0 : LOSS * Math.min(mps * mps / radiusM, 60);
        mps = Math.max(SLOWEST_MPS, mps + (gain - loss - G * way.z()) * DT);
        move(way.times(mps));
    }

    /** Slower or faster by hand, as on a way. */
    void speed(double wantedMps) {
        mps += Math.max(-2, Math.min(2, wantedMps - mps)) * DT;
    }

    void move(V3 airMps) {
        flown = flown.plus(airMps.minus(flown).times(DT / lagS));
        V3 ground = flown.plus(place.z() > 1 ? wind : new V3(0, 0, 0));
        place = place.plus(ground.times(DT));
        tS += DT;
        if (steps++ % 5 == 0) {
            truth.instants.add(new Truth.Instant(tS, place, ground));
        }
    }

    /** Whether a line down has to end here, for a circle of 3.5 g to end above the ground. */
    boolean mustPullOut() {
        double level = Math.sqrt(Math.max(0, 1 - way.z() * way.z()));
        return way.z() < -0.1 && place.z() < LOWEST_M + radiusM(3.5) * (1 - level) + 0.3 * mps;
    }

    void point(V3 newWay, V3 newUp) {
        way = newWay.unit();
        up = newUp.across(way).unit();
    }

    V3 level() {
        return new V3(way.x(), way.y(), 0).unit();
    }

    /** One step round towards a place, at no more than this bank, and towards a height, at no more than this slope. */
    void steer(V3 to, double high, double tanBank, double slope) {
        V3 heading = level();
        V3 wanted = new V3(to.x() - place.x(), to.y() - place.y(), 0).unit();
        double error = Math.atan2(heading.cross(wanted).z(), heading.dot(wanted));
        if (Math.abs(error) > 2 && place.y() < 200) {
            error = (heading.x() < 0 ? -1 : 1) * Math.abs(error);
        }
        double most = G * tanBank / mps;
        double rate = Math.max(-most, Math.min(most, error));
        double climb = Math.max(-slope, Math.min(slope, (high - place.z()) / 250));
        V3 next = heading.turned(V3.UP, rate * DT);
        way = new V3(next.x(), next.y(), way.z() + (climb - way.z()) * DT).unit();
        up = V3.UP.across(way).unit();
        move(way.times(mps));
    }
}
