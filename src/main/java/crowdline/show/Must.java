package crowdline.show;

/** What values must be; every refusal names the value and what is allowed. */
final class Must {
    private Must() {}

    static void beFinite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be a number");
        }
    }

    static void bePositive(String what, double value) {
        beFinite(what, value);
        if (value <= 0) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be above 0");
        }
    }

    static void beAtLeast(String what, double value, double least) {
        beFinite(what, value);
        if (value < least) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be " + least + " or more");
        }
    }

    static void beWithin(String what, double value, double least, double greatest) {
        beFinite(what, value);
        if (value < least || value > greatest) {
            throw new IllegalArgumentException(
                    what + " is " + value + "; it must be from " + least + " to " + greatest);
        }
    }

    static void bePower(double power) {
        beWithin("power", power, 0, 1);
    }

    static void beSaid(String what, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is empty; it needs some text");
        }
    }
}
