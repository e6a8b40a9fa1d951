package crowdline.sight.picture;

import crowdline.flight.body.Vec;
import java.util.List;

/**
 * One flat piece of an aircraft's skin, in lengths of its wing span: x towards the nose, y towards the right wing, z towards
 * the pilot's up.
 *
 * @param corners three or more, anticlockwise seen from outside
 * @param outside the tone of its outer side
 * @param inside the tone of the other side, which is seen of a thin piece such as a wing
 */
public record Facet(List<Vec> corners, Tone outside, Tone inside) {
    /** What a piece looks like; a theme gives each its colour, so that top and underside can always be told apart. */
    public enum Tone {
        TOP,
        UNDERSIDE,
        /** A broad band across the underside of a wing. */
        BAND,
        SIDE,
        NOSE,
        TAIL,
        GLASS
    }

    public Facet {
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException("a flat piece has three corners or more, not " + corners.size());
        }
    }

    /** Which way its outer side looks, of no particular length. These axes are left-handed, so the product is the other way round. */
    Vec outward() {
        Vec a = corners.get(0);
        return corners.get(2).minus(a).cross(corners.get(1).minus(a));
    }

    Vec middle() {
        Vec sum = corners.get(0);
        for (Vec corner : corners.subList(1, corners.size())) {
            sum = sum.plus(corner);
        }
        return sum.times(1.0 / corners.size());
    }
}
