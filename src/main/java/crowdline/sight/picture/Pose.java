package crowdline.sight.picture;

import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;

/**
 * Where an aircraft is and how it lies in the air.
 *
 * @param tS seconds since the act began
 * @param place in the display frame, metres
 * @param nose direction of the nose, a unit vector
 * @param up the pilot's up, a unit vector at a right angle to the nose
 * @param g load factor felt along the pilot's up
 */
public record Pose(double tS, Vec place, Vec nose, Vec up, double g) {
    public static Pose of(Sample sample) {
        return new Pose(sample.tS(), sample.place(), sample.nose(), sample.up(), sample.g());
    }

    /** The direction of the right wing, a unit vector. */
    public Vec right() {
        return nose.cross(up);
    }

    /** The same somewhere else. */
    public Pose movedBy(double alongM, double awayM, double upM) {
        return new Pose(tS, place.plus(new Vec(alongM, awayM, upM)), nose, up, g);
    }

    /** As in a mirror that stands along the line of sight through the middle: what flew to the right flies to the left. */
    Pose mirrored() {
        return new Pose(tS, mirrored(place), mirrored(nose), mirrored(up), g);
    }

    private static Vec mirrored(Vec of) {
        return new Vec(-of.x(), of.y(), of.z());
    }

    /**
     * A point of the aircraft in the display frame.
     *
     * @param body in lengths of its wing span: x towards the nose, y towards the right wing, z towards the pilot's up
     * @param spanM how large the aircraft is drawn, metres
     */
    public Vec point(Vec body, double spanM) {
        return place.plus(turned(body).times(spanM));
    }

    /** A direction of the aircraft in the display frame. */
    Vec turned(Vec body) {
        return nose.times(body.x()).plus(right().times(body.y())).plus(up.times(body.z()));
    }

    /**
     * Between two poses of one flight, which lie less than half a turn apart.
     *
     * @param share 0 at the first to 1 at the second
     */
    public static Pose between(Pose a, Pose b, double share) {
        Vec nose = mixed(a.nose, b.nose, share).unit();
        Vec up = mixed(a.up, b.up, share).across(nose);
        return new Pose(
                a.tS + share * (b.tS - a.tS),
                mixed(a.place, b.place, share),
                nose,
                up.length() < 1e-6 ? a.up : up.unit(),
                a.g + share * (b.g - a.g));
    }

    private static Vec mixed(Vec a, Vec b, double share) {
        return a.plus(b.minus(a).times(share));
    }
}
