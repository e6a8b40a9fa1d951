package crowdline.show;

import java.util.Locale;

/** What values must be; every refusal names the value and what is allowed. */
final class Must {
    private Must() {}

    public static void beFinite(String what, double value) {
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

    public static void beSaid(String what, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is empty; it needs some text");
        }
        beShort(what, text);
    }

    private static void beShort(String what, String text) {
        int letters = text.codePointCount(0, text.length());
        if (letters > Most.LETTERS) {
            throw new IllegalArgumentException(String.format(
                    Locale.UK,
                    "%s is %,d letters long; the limit is %,d, so shorten it or split it",
                    what,
                    letters,
                    Most.LETTERS));
        }
    }
}
