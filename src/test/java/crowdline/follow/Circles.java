package crowdline.follow;

import crowdline.show.figure.Element;
import java.util.Objects;
import java.util.function.DoubleSupplier;

/** Pulls and pushes an {@link Aircraft} through arcs, as a pilot is used to. */
final class Circles {
    /** What is pulled at least in a circle of one load, beside what flight on needs: who begins it slowly is soon fast. */
    private static final double LEAST_PULL_G = 2;

    private final Aircraft a;
    private final Habit pull;
    private final boolean other;

    /** @param other whether what is planned with one load is flown with one radius, and the other way round */
    Circles(Aircraft aircraft, Habit pull, boolean other) {
        a = aircraft;
        this.pull = pull;
        this.other = other;
    }

    /** The load that holds a radius where the aircraft is now, g. */
    private double held(Element.Arc arc, int sign, double factor) {
        double radius = arc.value() / factor * (1 - (1 - arc.topShare()) * (1 - sign * a.up.z()) / 2);
        return a.up.z() + sign * a.speedMps * a.speedMps / radius / Aircraft.G;
    }

    /**
     * What a pilot pulls in an arc, g: as it is given, or for one who flies other circles a radius where a load is given,
     * but for half the pull at least, and a load where a radius is.
     */
    private DoubleSupplier pulled(Element.Arc arc, int sign, double factor) {
        double still = a.up.z();
        if (arc.size() == Element.Size.TIGHTEST) {
            double tightness = 0.8 + 0.2 * Math.min(factor, 1);
            return () -> sign * a.tightest() * tightness;
        }
        boolean radius = arc.size() == Element.Size.RADIUS_M;
        double asked = radius ? held(arc, sign, factor) : still + (arc.value() - still) * factor;
        if (radius && other) {
            double load = still + sign * Math.max(LEAST_PULL_G, Math.abs(asked - still));
            return () -> a.limited(load);
        }
        if (!radius && !other) {
            return () -> a.limited(asked);
        }
        if (radius) {
            return () -> a.limited(held(arc, sign, factor));
        }
        double pull = asked - still;
        double per = Math.abs(pull) / (a.speedMps * a.speedMps);
        return () -> a.limited(a.up.z() + sign * Math.max(Math.abs(pull) / 2, per * a.speedMps * a.speedMps));
    }

    void fly(Element.Arc arc) {
        int sign = arc.way() == Element.Way.PULL ? 1 : -1;
        DoubleSupplier pulled = pulled(arc, sign, pull.factor());
        double wanted = angle(arc, sign);
        double turned = 0;
        double end = a.tS + 60;
        while (turned < wanted && a.tS < end) {
            V3 before = a.direction;
            double g = pulled.getAsDouble();
            if (a.speedMps < 14) {
                g = sign * 0.6 + a.up.z();
            }
            a.curve(g, arc.power());
            double step = Math.acos(Math.min(1, before.dot(a.direction)));
            turned += Math.signum(sign * before.cross(a.direction).dot(before.cross(a.up))) * step;
        }
        Double path = arc.toPathDeg();
        if (path != null) {
            settle(path);
        }
    }

    private static double ahead(double angle) {
        double x = angle % (2 * Math.PI);
        x = x < -0.01 ? x + 2 * Math.PI : x;
        return x < 0.01 || 2 * Math.PI - x < 0.01 ? 0 : x;
    }

    private double angle(Element.Arc arc, int sign) {
        Double degrees = arc.degrees();
        if (degrees != null) {
            return Math.toRadians(degrees);
        }
        double target = Math.toRadians(Objects.requireNonNull(arc.toPathDeg()));
        V3 side = a.up.times(sign);
        double now = Math.atan2(a.direction.z(), side.z());
        // Along the arc, height rate = d_z cos θ + s_z sin θ = R sin(θ + now).
        double reach = Math.hypot(a.direction.z(), side.z());
        double arcsine = Math.asin(Math.max(-1, Math.min(1, Math.sin(target) / Math.max(reach, 1e-9))));
        return Math.min(ahead(arcsine - now), ahead(Math.PI - arcsine - now));
    }

    private void settle(double pathDeg) {
        double g = Math.toRadians(pathDeg);
        V3 level = new V3(a.direction.x(), a.direction.y(), 0);
        if (Math.abs(pathDeg) < 80 && level.length() > 0.1) {
            V3 d = level.unit().times(Math.cos(g)).plus(V3.UP.times(Math.sin(g)));
            a.point(d, a.up);
        }
    }
}
