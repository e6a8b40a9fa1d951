package crowdline.sheet.still;

import crowdline.flight.body.Vec;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Track;
import java.util.ArrayList;
import java.util.List;

/**
 * What is looked at.
 *
 * @param flown how it is flown; not empty
 * @param eye where it is seen from
 * @param outline the shape of the aircraft
 */
public record Subject(Flown flown, Eye eye, Outline outline) {
    /** Where a rope is made fast: at the tail of the one that pulls, and at the nose of the other, in their own spans. */
    private static final Vec TAIL = new Vec(-0.4, 0, 0);

    private static final Vec NOSE = new Vec(0.2, 0, 0);

    /** A figure that stands nowhere, from so far off that it is seen well. */
    public static Subject of(Flown flown, Outline outline) {
        return new Subject(flown, Eye.before(flown), flown.company().outline().orElse(outline));
    }

    Subject flying(Flown other) {
        return new Subject(other, eye, outline);
    }

    /**
     * One of those that are seen.
     *
     * @param flown as it is drawn
     * @param size how large, in drawn spans
     * @param onARope whether a rope leads to it from the leader
     */
    public record Seen(Flown flown, Outline outline, double size, boolean onARope) {
        /** The two ends of its rope at a moment, where aircraft are drawn so large, metres. */
        public List<Vec> rope(Seen leader, double atS, double spanM) {
            return List.of(
                    leader.flown.at(atS).point(TAIL, leader.size * spanM),
                    flown.at(atS).point(NOSE, size * spanM));
        }

        /** Whether anybody would expect smoke behind it. */
        public boolean smokes() {
            return switch (outline) {
                case MONOPLANE, BIPLANE, JET, GLIDER -> true;
                case HELICOPTER, CANOPY, JUMPER -> false;
            };
        }
    }

    /** Those that are seen where they are drawn so large, metres; the leader first. */
    public List<Seen> all(double spanM) {
        List<Seen> all = new ArrayList<>();
        all.add(new Seen(flown, outline, 1, false));
        for (Track track : flown.company().others()) {
            Outline own = track.outline();
            all.add(new Seen(track.drawn(spanM), own == null ? outline : own, track.spans(), track.onARope()));
        }
        return List.copyOf(all);
    }
}
