package crowdline.console.path;

import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import crowdline.sight.picture.Track;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A figure as the crowd sees it: whole, or at one moment.
 *
 * @param flown how it is flown; empty for nothing to be drawn
 * @param atS the moment, seconds since the act began; empty for the whole figure at once
 * @param eye where it is seen from
 * @param outline the shape of the aircraft
 * @param caption what there is to see at the moment; may be empty
 */
public record SkyView(Flown flown, OptionalDouble atS, Eye eye, Outline outline, String caption) {
    /** Nothing to be drawn. */
    public static final SkyView NONE =
            new SkyView(Flown.NONE, OptionalDouble.empty(), Eye.standing(1), Outline.MONOPLANE, "");

    /** The whole of a figure that stands nowhere, from so far off that it is seen well. */
    public static SkyView whole(Flown flown, Outline outline) {
        return flown.isEmpty()
                ? NONE
                : new SkyView(
                        flown,
                        OptionalDouble.empty(),
                        Eye.before(flown),
                        flown.company().outline().orElse(outline),
                        "");
    }

    public boolean isEmpty() {
        return flown.isEmpty();
    }

    /** The same at a moment, with what there is to see then. */
    public SkyView at(double tS) {
        return new SkyView(
                flown, OptionalDouble.of(tS), eye, outline, flown.captionAt(tS).words());
    }

    /** The same without words. */
    public SkyView silent() {
        return new SkyView(flown, atS, eye, outline, "");
    }

    /**
     * One of those that are seen.
     *
     * @param flown as it is drawn
     * @param size how large, in drawn spans
     */
    record Seen(Flown flown, Outline outline, double size) {
        /** Whether anybody would expect smoke behind it. */
        boolean smokes() {
            return switch (outline) {
                case MONOPLANE, BIPLANE, JET, GLIDER -> true;
                case HELICOPTER, CANOPY, JUMPER -> false;
            };
        }
    }

    /** Somebody beside an aeroplane, in its spans; larger than they are, to be seen at all. */
    private static final double BESIDE_AN_AEROPLANE = 0.4;

    /** Those that are seen where they are drawn so large, metres; the leader first. */
    List<Seen> all(double spanM) {
        List<Seen> all = new ArrayList<>();
        all.add(new Seen(flown, outline, 1));
        for (Track track : flown.company().others()) {
            Outline own = track.outline();
            all.add(new Seen(track.drawn(spanM), own == null ? outline : own, own == null ? 1 : BESIDE_AN_AEROPLANE));
        }
        return List.copyOf(all);
    }

    /** Where the aircraft is at the moment shown; at its beginning if the whole is shown. */
    Pose pose() {
        return flown.at(atS.orElse(flown.fromS()));
    }
}
