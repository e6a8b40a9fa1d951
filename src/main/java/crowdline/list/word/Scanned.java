package crowdline.list.word;

import java.util.regex.Pattern;

/** What a scanner takes for another sign, and units with dots: "l00p", "0ff", "25O m.p.h.". */
final class Scanned {
    private static final Pattern NOUGHT_IN_A_WORD = Pattern.compile("(?<=[a-z])0+(?=[a-z])"
            + "|(?<![\\w.,:])0(?=[a-z]{2})(?!0(?:ft|feet|kts?|kn|secs?|mins?|deg|km|mph|am|pm|hrs?|th|st|nd|rd)\\b)");
    private static final Pattern O_IN_A_NUMBER = Pattern.compile("(?<=\\d)o(?![a-z'])");

    private static final Pattern DOTTED = Pattern.compile("\\b(?:m\\.p\\.h|k\\.p\\.h)\\b\\.?|\\bh\\.p\\b\\.?");

    private static final Pattern THRUST = Pattern.compile("(?<=\\d) ?kN\\b");

    private Scanned() {}

    /** The folded text with spaces in place of kilonewtons, which are no knots once all letters are small. */
    static String withoutThrust(String written, String folded) {
        StringBuilder text = new StringBuilder(folded);
        THRUST.matcher(written)
                .results()
                .forEach(unit -> text.replace(
                        unit.start(), unit.end(), " ".repeat(unit.group().length())));
        return text.toString();
    }

    /** The text, as long as it was, with the signs that are meant. */
    static String mended(String folded) {
        String words = NOUGHT_IN_A_WORD
                .matcher(folded)
                .replaceAll(found -> "o".repeat(found.group().length()));
        return DOTTED.matcher(O_IN_A_NUMBER.matcher(words).replaceAll("0"))
                .replaceAll(found -> withoutDots(found.group()));
    }

    /** "280 m.p.h." is as long as "280 mph". */
    private static String withoutDots(String unit) {
        String letters = unit.replace(".", "");
        return letters + " ".repeat(unit.length() - letters.length());
    }
}
