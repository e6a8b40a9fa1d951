package crowdline.follow;

import crowdline.flight.leg.Sample;
import crowdline.show.aircraft.Engine;
import java.util.SplittableRandom;

/**
 * Back to where a figure begins, for a pilot who finds himself too far from there, or too slow, to begin it: nobody flies a
 * loop six kilometres from the crowd, nor at half its speed. It is in no plan.
 */
final class WayBack {
    /** Seconds of flight along the A-axis from its place at which nobody begins a figure. Judgement. */
    private static final double FAR_S = 20;
    /** The same away from the crowd or towards it. */
    private static final double FAR_ASIDE_S = 10;
    /** Share of the speed planned under which nobody does. Judgement. */
    private static final double SLOW_SHARE = 0.65;
    /** A figure that begins so much across the A-axis has no way in along it. */
    private static final double ALONG = 0.5;

    /** Metres of height that nobody gives up, and metres flown for each metre that a glider sinks. From memory. */
    private static final double LOWEST_M = Aircraft.LOWEST_M + 20;

    private static final double GLIDES = 25;

    private static final double LONGEST_S = 90;

    private final Aircraft a;
    private final V3 wind;
    private final Sky sky;
    private final SplittableRandom random;

    WayBack(Aircraft aircraft, V3 wind, Sky sky, SplittableRandom random) {
        a = aircraft;
        this.wind = wind;
        this.sky = sky;
        this.random = random;
    }

    /** @param begin where and how fast the figure is planned to begin */
    boolean isNeeded(Sample begin) {
        if (Math.abs(begin.nose().x()) < ALONG || Math.abs(a.direction.x()) < ALONG) {
            return false;
        }
        V3 off = a.place.minus(place(begin, a.direction.x()));
        return Math.abs(off.x()) > FAR_S * begin.speedMps()
                || Math.abs(off.y()) > FAR_ASIDE_S * begin.speedMps()
                || a.speedMps < SLOW_SHARE * begin.speedMps();
    }

    /** Flies on to where it begins if that is ahead, else turns back and flies it the other way. */
    void fly(Sample begin) {
        double way = Math.signum(a.direction.x());
        boolean ahead = place(begin, way).minus(a.place).x() * way > 0;
        V3 out = new V3(ahead ? way : -way, 0, 0);
        V3 off = new V3(sky.placeM() * Variety.bell(random), 0.5 * sky.placeM() * Variety.bell(random), 0);
        V3 to = place(begin, out.x()).plus(off);
        Steering steering = new Steering(a, wind, Math.toRadians(50 + 12 * random.nextDouble()));
        boolean glides = a.airframe.engine() instanceof Engine.None;
        double spareM = Math.max(0, a.place.z() - LOWEST_M - to.minus(a.place).length() / GLIDES);
        double mps = begin.speedMps();
        double high = to.z() + sky.heightM() * Variety.bell(random);
        if (glides) {
            mps = Math.min(mps, Math.sqrt(a.speedMps * a.speedMps + 2 * Aircraft.G * spareM));
            high = Math.min(
                    high,
                    Math.max(
                            LOWEST_M, a.place.z() - Math.max(0, mps * mps - a.speedMps * a.speedMps) / 2 / Aircraft.G));
        }
        double radius = mps * mps / Aircraft.G / steering.tanBank();
        if (!ahead) {
            V3 back = to.minus(out.times(1.5 * radius + 3 * mps));
            steer(steering, back.plus(new V3(0, 2.2 * radius, 0)), radius, mps, high, glides);
            steer(steering, back, radius, mps, high, glides);
        }
        double end = a.tS + LONGEST_S;
        while (a.tS < end && (to.minus(a.place).dot(out) > 0 || steering.level().dot(out) < 0.9)) {
            boolean past = to.minus(a.place).dot(out) <= 0;
            V3 beside = new V3(a.place.x(), past ? a.place.y() : to.y(), 0);
            step(steering, beside.plus(out.times(Math.max(3 * mps, radius))), mps, high, glides);
        }
        a.point(new V3(out.x(), 0.3 * steering.level().y(), 0), V3.UP);
        a.load = 1;
    }

    private void steer(Steering steering, V3 to, double near, double mps, double high, boolean glides) {
        V3 leg = to.minus(a.place);
        V3 towards = new V3(leg.x(), leg.y(), 0).unit();
        double end = a.tS + LONGEST_S;
        while (a.tS < end && to.minus(a.place).dot(towards) > near) {
            step(steering, to, mps, high, glides);
        }
    }

    private void step(Steering steering, V3 to, double mps, double high, boolean glides) {
        steering.step(to, high, mps, glides ? 0 : 0.2 * a.speedMps, 0.25 * a.speedMps);
    }

    private static V3 place(Sample begin, double way) {
        var p = begin.place();
        return new V3(begin.nose().x() * way < 0 ? -p.x() : p.x(), p.y(), Math.max(p.z(), LOWEST_M));
    }
}
