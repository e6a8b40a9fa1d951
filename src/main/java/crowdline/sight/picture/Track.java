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
 * @param onARope whether a rope leads to it from the tail of the one it flies with
 */
public record Track(
        List<Pose> poses, List<Vec> slots, @Nullable Outline outline, boolean onARope) {
    /** Somebody beside an aeroplane, in its spans; larger than they are, to be seen at all. */
    private static final double PERSON_SPANS = 0.4;
    /** A glider beside the aeroplane that pulls it, in its spans: usual for the two, by eye. */
    private static final double GLIDER_SPANS = 1.6;

    public Track {
        poses = List.copyOf(poses);
        slots = List.copyOf(slots);
        if (poses.size() < 2 || poses.size() != slots.size()) {
            throw new IllegalArgumentException(
                    poses.size() + " poses and " + slots.size() + " slots; there must be as many, and 2 or more");
        }
    }

    /** On no rope. */
    public Track(List<Pose> poses, List<Vec> slots, @Nullable Outline outline) {
        this(poses, slots, outline, false);
    }

    /** One that keeps its slot all the way. */
    public static Track keeping(List<Pose> poses, Vec slot) {
        return new Track(poses, Collections.nCopies(poses.size(), slot), null);
    }

    /** A glider in its place, on a rope. */
    public Track pulled() {
        return new Track(poses, slots, Outline.GLIDER, true);
    }

    /** How large it is drawn, in spans of the one it flies with. */
    public double spans() {
        return outline == null ? 1 : outline == Outline.GLIDER ? GLIDER_SPANS : PERSON_SPANS;
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
        return new Track(poses.stream().map(p -> p.movedBy(alongM, awayM, upM)).toList(), slots, outline, onARope);
    }

    /** As in a mirror along the line of sight. */
    Track mirrored() {
        return new Track(
                poses.stream().map(Pose::mirrored).toList(),
                slots.stream().map(s -> new Vec(s.x(), -s.y(), s.z())).toList(),
                outline,
                onARope);
    }
}
