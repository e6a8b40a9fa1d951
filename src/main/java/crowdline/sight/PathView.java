package crowdline.sight;

import crowdline.flight.body.Vec;

/** The two ways a path is looked at; along the A-axis runs to the right in both. */
public enum PathView {
    /** From the crowd: height goes up. */
    SIDE {
        @Override
        public double upM(Vec place) {
            return place.z();
        }
    },
    /** From above, with the crowd at the bottom: away from it goes up. */
    PLAN {
        @Override
        public double upM(Vec place) {
            return place.y();
        }
    };

    /** What goes up in this view, metres. */
    public abstract double upM(Vec place);
}
