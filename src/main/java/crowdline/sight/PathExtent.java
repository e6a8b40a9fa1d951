package crowdline.sight;

import crowdline.flight.body.Vec;
import java.util.List;

/**
 * What a view must show, metres.
 *
 * @param left least along the A-axis
 * @param right most along the A-axis
 * @param low least of what goes up
 * @param high most of what goes up
 */
public record PathExtent(double left, double right, double low, double high) {

    public double wideM() {
        return right - left;
    }

    public double tallM() {
        return high - low;
    }

    /** True if a point is in the view, or no more than {@code beyondM} beyond its edges. */
    public boolean holds(double alongM, double upM, double beyondM) {
        return alongM >= left - beyondM && alongM <= right + beyondM && upM >= low - beyondM && upM <= high + beyondM;
    }

    /** Widened to show a point as well. */
    public PathExtent with(double alongM, double upM) {
        return new PathExtent(Math.min(left, alongM), Math.max(right, alongM), Math.min(low, upM), Math.max(high, upM));
    }

    /** Widened to show places in a view as well. */
    public PathExtent with(PathView view, List<Vec> places) {
        PathExtent all = this;
        for (Vec place : places) {
            all = all.with(place.x(), view.upM(place));
        }
        return all;
    }
}
