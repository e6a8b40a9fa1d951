package crowdline.follow;

import crowdline.show.aircraft.Engine;
import crowdline.show.figure.Placing;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Take-offs, landings and flights round to where an act goes on, at the speeds, banks and climbs the aircraft has. */
final class Circuit {
    private static final double FT = 0.3048;
    private static final double KT = 1852.0 / 3600;
    private static final double STILL_MPS = 2;

    private final Aircraft a;
    private final double stall;
    private final double climb;
    private final double sink;
    private final double spreadM;
    private final double extra;
    private final Steering steering;

    /** @param spreadM how far off its places it is flown, standard deviation, metres */
    Circuit(Aircraft aircraft, V3 wind, double spreadM, SplittableRandom random) {
        a = aircraft;
        this.spreadM = spreadM;
        stall = a.stallMps();
        steering = new Steering(a, wind, Math.toRadians(30 + 20 * random.nextDouble()));
        climb = a.airframe.engine() instanceof Engine.None ? 0 : stall * (0.10 + 0.12 * random.nextDouble());
        sink = stall * (0.13 + 0.10 * random.nextDouble());
        extra = random.nextDouble();
    }

    private record Way(V3 place, double mps) {}

    /** @param seconds planned; a longer way is flown if there is time for it, but nothing is hurried */
    void fly(Placing exit, V3 out, double seconds, SplittableRandom random) {
        V3 to = new V3(
                exit.alongM() + spreadM * Variety.bell(random),
                exit.awayM() + 0.3 * spreadM * Variety.bell(random),
                exit.heightFt() == 0 ? 0 : Math.max(15, exit.heightFt() * FT + 0.4 * spreadM * Variety.bell(random)));
        double begins = a.tS;
        boolean lands = exit.heightFt() == 0;
        if (a.place.z() < 5) {
            takeOff(out);
        }
        boolean ahead = to.minus(a.place).dot(out) > 0
                && Math.abs(to.y() - a.place.y()) < 150
                && a.direction.dot(out) > 0.7
                && !lands;
        double exitMps = lands ? 1.3 * stall : Math.max(exit.kt() * KT, 1.25 * stall);
        if (!ahead) {
            round(to, out, lands, exitMps, seconds - (a.tS - begins));
        }
        onTo(to, out, exitMps);
        if (lands) {
            touchDown();
        } else {
            a.speedMps = Math.max(a.speedMps, 1.2 * stall);
            a.point(out, V3.UP);
        }
        a.load = 1;
    }

    private void takeOff(V3 out) {
        V3 along = a.direction.dot(out) < 0.7 ? out : a.direction;
        a.point(new V3(along.x(), along.y(), 0), V3.UP);
        double push = 2 + 1.5 * extra;
        while (a.speedMps < 1.15 * stall) {
            a.speedMps += push * Aircraft.DT;
            a.ground(a.direction.times(a.speedMps));
        }
    }

    private void round(V3 to, V3 out, boolean lands, double exitMps, double seconds) {
        double mps = lands ? 1.6 * stall : 0.5 * (exitMps + 1.6 * stall);
        double radius = mps * mps / (Aircraft.G * steering.tanBank());
        double aside = to.y() + 2.2 * radius + 200 * extra;
        double high = lands ? climb == 0 ? a.place.z() : 90 + 3 * stall + 60 * extra : Math.max(to.z(), 60);
        double in = 1.5 * radius + 400;
        boolean along = a.direction.dot(out) > 0;
        double far = Math.max(a.place.minus(to).dot(out) + 1.5 * radius + 200, -0.5 * in);
        double length = along
                ? 2 * far + in + 2 * aside
                : in + Math.abs(a.place.minus(to).dot(out)) + 2 * aside;
        double longer = Math.max(0, Math.min(2500, (seconds - length / mps) * mps / 2));
        List<Way> ways = new ArrayList<>();
        if (along) {
            ways.add(new Way(place(to, out, far + 0.4 * longer, to.y(), high), mps));
            ways.add(new Way(place(to, out, far + 0.4 * longer, aside, high), mps));
        } else {
            ways.add(new Way(place(to, out, a.place.minus(to).dot(out) - 2 * radius, aside, high), mps));
        }
        ways.add(new Way(place(to, out, -in - 0.6 * longer, aside, high), mps));
        ways.add(new Way(
                place(to, out, -in - radius - 0.6 * longer, 0.4 * aside, lands ? 0.7 * in * sink / exitMps : high),
                exitMps));
        for (Way w : ways) {
            double end = a.tS + 120;
            double near = Math.max(radius, 3 * mps);
            V3 leg = w.place.minus(a.place);
            V3 way = new V3(leg.x(), leg.y(), 0).unit();
            while (a.tS < end && w.place.minus(a.place).dot(way) > near) {
                steering.step(w.place, w.place.z(), w.mps, climb, sink);
            }
        }
    }

    private static V3 place(V3 to, V3 out, double along, double awayM, double high) {
        return new V3(to.x() + out.x() * along, awayM, high);
    }

    /** Along the line that leads out, down or up to the height at its place. */
    private void onTo(V3 to, V3 out, double mps) {
        double end = a.tS + 150;
        double from = a.place.z();
        double length = Math.max(to.minus(a.place).dot(out), 1);
        while (a.tS < end) {
            double left = to.minus(a.place).dot(out);
            if (left <= 0 || (to.z() == 0 && a.place.z() < 0.5)) {
                return;
            }
            V3 aim = to.minus(out.times(Math.max(0, left - Math.max(250, 5 * a.speedMps))));
            double high = to.z() == 0 ? from * Math.min(1, left / length) : to.z();
            steering.step(left < 250 ? a.place.plus(out.times(300)) : aim, high, mps, climb, sink);
        }
    }

    private void touchDown() {
        while (a.place.z() > 0.3) {
            steering.sinkOn(a.place.z() > 8 ? sink : 1.2);
        }
        double slows = 1.5 + 1.5 * extra;
        V3 rolling = steering.level();
        while (a.speedMps > STILL_MPS) {
            a.speedMps -= slows * Aircraft.DT;
            a.place = new V3(a.place.x(), a.place.y(), 0);
            a.ground(rolling.times(a.speedMps));
        }
        a.point(rolling, V3.UP);
    }
}
