package crowdline.live.event;

import org.jspecify.annotations.Nullable;

/** What values must be; every refusal names the value and what is allowed. */
public final class Must {
    private Must() {}

    public static void beTime(String what, double atS) {
        if (!Double.isFinite(atS) || atS < 0) {
            throw new IllegalArgumentException(what + " is " + atS + "; it must be 0 or more seconds");
        }
    }

    public static void beFinite(String what, @Nullable Double value) {
        if (value != null && !Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be a number");
        }
    }

    public static void beSaid(String what, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is empty; it needs some text");
        }
    }

    public static void beIndex(String what, int index) {
        if (index < 0) {
            throw new IllegalArgumentException(what + " is " + index + "; it must be 0 or more");
        }
    }
}
