package crowdline.sight.picture;

import crowdline.flight.body.Vec;
import crowdline.show.aircraft.Outline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One that flies with another. Aircraft are drawn larger than they are, and so is what lies between them where they keep
 * together: it is counted in drawn wing spans.
 *
 * @param poses in the order flown
 * @param slots for each pose how far from it the aircraft is drawn, in its own axes and in drawn spans: x towards the nose, y
 *     towards the right wing, z towards the pilot's up
 * @param outline its shape; null for that of the one it flies with
 */
public record Track(
        List<Pose> poses, List<Vec> slots, @Nullable Outline outline) {
    public Track {
        poses = List.copyOf(poses);
        slots = List.copyOf(slots);
        if (poses.size() < 2 || poses.size() != slots.size()) {
            throw new IllegalArgumentException(
                    poses.size() + " poses and " + slots.size() + " slots; there must be as many, and 2 or more");
        }
    }

    /** One that keeps its slot all the way. */
    public static Track keeping(List<Pose> poses, Vec slot) {
        return new Track(poses, Collections.nCopies(poses.size(), slot), null);
    }

    /** As it is drawn where aircraft are so large, metres. */
    public Flown drawn(double spanM) {
        List<Pose> drawn = new ArrayList<>(poses.size());
        for (int i = 0; i < poses.size(); i++) {
            Pose pose = poses.get(i);
            Vec off = pose.turned(slots.get(i)).times(spanM);
            drawn.add(pose.movedBy(off.x(), off.y(), off.z()));
        }
        return new Flown(drawn, List.of());
    }

    Track movedBy(double alongM, double awayM, double upM) {
        return new Track(poses.stream().map(p -> p.movedBy(alongM, awayM, upM)).toList(), slots, outline);
    }
}
