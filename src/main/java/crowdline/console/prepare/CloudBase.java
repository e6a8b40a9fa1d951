package crowdline.console.prepare;

import java.util.OptionalDouble;

/** Reads a cloud base as it is typed. */
final class CloudBase {
    static final String HOW = "Type the cloud base in feet above the display datum, such as 1500";

    private CloudBase() {}

    /** The feet in a text such as "1,500" or "1500 ft"; empty if it is no height. */
    static OptionalDouble read(String text) {
        String digits = text.strip().replace(",", "").replaceFirst("(?i)\\s*(ft|feet)$", "");
        if (!digits.matches("\\d{1,5}(\\.\\d+)?")) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(digits));
    }
}
