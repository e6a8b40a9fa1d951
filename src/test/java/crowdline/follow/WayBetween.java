package crowdline.follow;

import crowdline.flight.leg.Sample;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The way from one figure to the next as a pilot flies it: after the path planned, from wherever the last figure ended,
 * never quite along it, and to its place, height and speed only nearly.
 */
final class WayBetween {
    private static final double SLOWEST = 0.5;
    private static final double FASTEST = 3;

    private final Aircraft a;
    private final Steering steering;
    private final double aheadS;
    private final V3 off;
    private final double speed;

    /** @param share how far the pilot's speed differs */
    WayBetween(Aircraft aircraft, V3 wind, Sky sky, double share, SplittableRandom random) {
        a = aircraft;
        steering = new Steering(a, wind, Math.toRadians(62 + 10 * random.nextDouble()));
        aheadS = 2 + 1.5 * random.nextDouble();
        off = new V3(
                sky.placeM() * Variety.bell(random),
                0.7 * sky.placeM() * Variety.bell(random),
                sky.heightM() * Variety.bell(random));
        speed = 1 + 0.5 * share * Variety.bell(random);
    }

    /** @param mirrored whether it is flown the other way along the A-axis than planned */
    void fly(List<Sample> planned, boolean mirrored) {
        double at = 0;
        int last = planned.size() - 1;
        double stepS = last < 1 ? 1 : (planned.get(last).tS() - planned.get(0).tS()) / last;
        int ahead = (int) Math.max(1, Math.round(aheadS / stepS));
        double most = FASTEST * Aircraft.DT / stepS;
        double least = SLOWEST * Aircraft.DT / stepS;
        while (at < last) {
            int i = (int) at;
            V3 here = place(planned, i, mirrored);
            V3 way = place(planned, i + 1, mirrored).minus(place(planned, i, mirrored));
            V3 level = new V3(way.x(), way.y(), 0).unit();
            at += a.place.minus(here).dot(level) > 0 ? most : least;
            double climb = 0.5 * a.speedMps;
            steering.step(
                    place(planned, i + ahead, mirrored),
                    place(planned, i + ahead / 2, mirrored).z(),
                    speed * planned.get(Math.min(i + ahead, last)).speedMps(),
                    climb,
                    climb);
        }
        V3 out = steering.level();
        a.point(new V3(Math.signum(out.x()), 0.3 * out.y(), 0), V3.UP);
        a.load = 1;
    }

    /** Where the path is to be flown; beyond its end straight on. */
    private V3 place(List<Sample> planned, int i, boolean mirrored) {
        int last = planned.size() - 1;
        var p = planned.get(Math.min(i, last)).place();
        V3 place = new V3(p.x(), p.y(), p.z());
        if (i > last && last > 0) {
            var q = planned.get(last - 1).place();
            place = place.plus(place.minus(new V3(q.x(), q.y(), q.z())).times(i - last));
        }
        return new V3(mirrored ? -place.x() : place.x(), place.y(), Math.max(place.z(), 20)).plus(off);
    }
}
