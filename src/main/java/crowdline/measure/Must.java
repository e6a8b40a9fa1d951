package crowdline.measure;

import org.jspecify.annotations.Nullable;

/**
 * What values must be. Each method throws an {@link IllegalArgumentException} that names the value and what is allowed.
 */
public final class Must {
    private Must() {}

    /** Refuses what is infinite or NaN. */
    public static void beFinite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be a number");
        }
    }

    /** See {@link #beFinite(String, double)}; null stands for unknown and is let through. */
    public static void beFiniteIfKnown(String what, @Nullable Double value) {
        if (value != null) {
            beFinite(what, value);
        }
    }

    /** Refuses what is not finite and above 0. */
    public static void bePositive(String what, double value) {
        beFinite(what, value);
        if (value <= 0) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be above 0");
        }
    }

    /** Refuses what is not finite, or below {@code least}. */
    public static void beAtLeast(String what, double value, double least) {
        if (!(value >= least) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be " + least + " or more");
        }
    }

    /** Refuses what lies outside; NaN always does. */
    public static void beWithin(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    what + " is " + value + "; it must be a number from " + least + " to " + most);
        }
    }

    /** Refuses seconds that are not finite, or below 0. */
    public static void beTime(String what, double atS) {
        if (!Double.isFinite(atS) || atS < 0) {
            throw new IllegalArgumentException(what + " is " + atS + "; it must be 0 or more seconds");
        }
    }

    /** Refuses what is below 0. */
    public static void beIndex(String what, int index) {
        if (index < 0) {
            throw new IllegalArgumentException(what + " is " + index + "; it must be 0 or more");
        }
    }

    /** Refuses what is blank. */
    public static void beSaid(String what, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is empty; it needs some text");
        }
    }
}
