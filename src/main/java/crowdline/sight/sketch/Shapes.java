package crowdline.sight.sketch;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import crowdline.sight.picture.Track;
import java.util.ArrayList;
import java.util.List;

/** The shapes of formations: where those beside the leader fly, in drawn wing spans. */
final class Shapes {
    /** A wedge of five. It lies aslant, so that it is seen from the crowd: those on the left are higher. */
    static final List<Vec> WEDGE =
            List.of(new Vec(-1, -0.8, 0.45), new Vec(-1, 0.8, -0.45), new Vec(-2, -1.6, 0.9), new Vec(-2, 1.6, -0.9));
    /** The same five one behind the other, each a little lower. */
    static final List<Vec> LINE =
            List.of(new Vec(-1.25, 0, -0.2), new Vec(-2.5, 0, -0.4), new Vec(-3.75, 0, -0.6), new Vec(-5, 0, -0.8));

    private Shapes() {}

    /** All in their slots about a leader. */
    static List<Track> keeping(List<Vec> slots, Flown leader) {
        return slots.stream().map(slot -> Track.keeping(leader.poses(), slot)).toList();
    }

    /**
     * One that moves from a slot to another.
     *
     * @param fromS it leaves the first
     * @param toS it is in the second
     */
    static Track moving(List<Pose> poses, Vec first, Vec second, double fromS, double toS) {
        List<Vec> slots = new ArrayList<>();
        for (Pose pose : poses) {
            double share = smooth((pose.tS() - fromS) / (toS - fromS));
            slots.add(first.plus(second.minus(first).times(share)));
        }
        return new Track(poses, slots, null);
    }

    /** From 0 to 1, slow at both ends; before and after it stays. */
    static double smooth(double share) {
        double s = Math.max(0, Math.min(1, share));
        return s * s * (3 - 2 * s);
    }
}
