package crowdline.console.path;

import crowdline.sheet.still.Subject;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
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
        if (flown.isEmpty()) {
            return NONE;
        }
        Subject seen = Subject.of(flown, outline);
        return new SkyView(flown, OptionalDouble.empty(), seen.eye(), seen.outline(), "");
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

    /** What is looked at. */
    Subject subject() {
        return new Subject(flown, eye, outline);
    }

    /** Where the aircraft is at the moment shown; at its beginning if the whole is shown. */
    Pose pose() {
        return flown.at(atS.orElse(flown.fromS()));
    }
}
