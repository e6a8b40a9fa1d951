package crowdline.sight;

import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;

/** How the aircraft can turn from one sample to the next, in degrees, either way counted as positive. */
public enum Turning {
    /** About the nose. */
    ROLL,
    /** The nose round the compass, as in a spin. */
    COMPASS,
    /** The whole attitude about whatever axis, as in a tumble. */
    ATTITUDE;

    /** Degrees between two samples. */
    double deg(Sample from, Sample to) {
        return switch (this) {
            case ROLL -> rollDeg(from, to);
            case COMPASS -> compassDeg(from, to);
            case ATTITUDE -> attitudeDeg(from, to);
        };
    }

    /** Degrees a second between two samples. */
    double rate(Sample from, Sample to) {
        return deg(from, to) / (to.tS() - from.tS());
    }

    /** The roll that is left when the turn of the nose alone has been taken out. */
    private static double rollDeg(Sample from, Sample to) {
        Vec a = from.nose();
        Vec b = to.nose();
        double share = dot(from.up(), b) / Math.max(1 + dot(a, b), 1e-9);
        Vec carried = new Vec(
                from.up().x() - share * (a.x() + b.x()),
                from.up().y() - share * (a.y() + b.y()),
                from.up().z() - share * (a.z() + b.z()));
        return Math.toDegrees(Math.abs(Math.atan2(dot(cross(carried, to.up()), b), dot(carried, to.up()))));
    }

    private static double compassDeg(Sample from, Sample to) {
        Vec a = from.nose();
        Vec b = to.nose();
        return Math.toDegrees(Math.abs(Math.atan2(a.x() * b.y() - a.y() * b.x(), a.x() * b.x() + a.y() * b.y())));
    }

    /** From the trace of the rotation: 1 + 2 cos. */
    private static double attitudeDeg(Sample from, Sample to) {
        double trace = dot(from.nose(), to.nose())
                + dot(from.up(), to.up())
                + dot(cross(from.nose(), from.up()), cross(to.nose(), to.up()));
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, (trace - 1) / 2))));
    }

    private static double dot(Vec a, Vec b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static Vec cross(Vec a, Vec b) {
        return new Vec(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }
}
