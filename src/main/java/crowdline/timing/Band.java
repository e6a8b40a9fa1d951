package crowdline.timing;

/**
 * A central predictive interval.
 *
 * @param low lower end
 * @param high upper end, at least {@code low}
 */
public record Band(double low, double high) {
    /** The level of every band on screen: four in five fall inside. A design choice. */
    public static final double SHOWN_LEVEL = 0.8;

    public Band {
        if (!(low <= high)) {
            throw new IllegalArgumentException("the band is " + low + " to " + high + "; low must not be above high");
        }
    }

    public boolean holds(double value) {
        return low <= value && value <= high;
    }
}
