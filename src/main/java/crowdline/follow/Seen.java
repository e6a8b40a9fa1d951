package crowdline.follow;

import org.jspecify.annotations.Nullable;

/**
 * What the readings of the last second say together.
 *
 * @param alongM along the A-axis
 * @param awayM away from the crowd
 * @param heightM above the datum
 * @param alongMps over the ground; NaN when not known
 * @param awayMps over the ground; NaN together with {@code alongMps}
 * @param climbMps upwards, a mean over the last {@code overS}; NaN when not known
 * @param overS time over which {@code climbMps} was taken
 * @param newS seconds since the last reading that counted
 * @param sidewaysG how hard the path over the ground has been bent to a side over the last second, in g; NaN when not known
 * @param steady how straight and even the flight was over the last second or two, 0 to 1; 0 when not known
 * @param effort how hard it was flown over the last seconds; null when not known
 */
record Seen(
        double alongM,
        double awayM,
        double heightM,
        double alongMps,
        double awayMps,
        double climbMps,
        double overS,
        double newS,
        double sidewaysG,
        double steady,
        @Nullable Effort effort) {

    /** Where nothing is known of how the path is bent. */
    Seen(
            double alongM,
            double awayM,
            double heightM,
            double alongMps,
            double awayMps,
            double climbMps,
            double overS,
            double newS) {
        this(alongM, awayM, heightM, alongMps, awayMps, climbMps, overS, newS, Double.NaN, 0, null);
    }

    boolean hasSpeeds() {
        return !Double.isNaN(alongMps);
    }

    boolean hasClimb() {
        return !Double.isNaN(climbMps);
    }

    double groundMps() {
        return Math.sqrt(alongMps * alongMps + awayMps * awayMps);
    }
}
