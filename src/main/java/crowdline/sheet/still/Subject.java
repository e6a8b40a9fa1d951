package crowdline.sheet.still;

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
    /** Somebody beside an aeroplane, in its spans; larger than they are, to be seen at all. */
    private static final double BESIDE_AN_AEROPLANE = 0.4;

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
     */
    public record Seen(Flown flown, Outline outline, double size) {
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
        all.add(new Seen(flown, outline, 1));
        for (Track track : flown.company().others()) {
            Outline own = track.outline();
            all.add(new Seen(track.drawn(spanM), own == null ? outline : own, own == null ? 1 : BESIDE_AN_AEROPLANE));
        }
        return List.copyOf(all);
    }
}
