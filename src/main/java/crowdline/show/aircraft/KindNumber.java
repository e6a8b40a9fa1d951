package crowdline.show.aircraft;

import crowdline.measure.Must;
import crowdline.show.bounds.Most;

/**
 * One number as it is typical of a kind.
 *
 * @param value the typical one
 * @param low the low end of the published range, or of what is plausible where none is published
 * @param high the high end
 * @param source where value and range come from
 * @param trust how far
 */
public record KindNumber(double value, double low, double high, String source, Trust trust) {

    /** How a number was come by. */
    public enum Trust {
        /** Read in the source. */
        READ,
        /** Computed from what the source says. */
        DERIVED,
        /** Remembered; no source. */
        FROM_MEMORY,
        /** What is usual at displays; no source. */
        COMMON_PRACTICE
    }

    public KindNumber {
        Must.beFinite("low", low);
        Must.beFinite("high", high);
        Must.beWithin("value", value, low, high);
        Most.mustBeText("source", source);
    }

    /** The number moved towards an end of its range: all the way at 1 and -1. */
    double moved(double slider) {
        return value + slider * (slider > 0 ? high - value : value - low);
    }
}
