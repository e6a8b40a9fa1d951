package crowdline.console.prepare;

import crowdline.edit.act.CannotBe;
import org.jspecify.annotations.Nullable;

/** Reads numbers as they are typed, and writes them so. */
final class Numbers {
    private Numbers() {}

    /** A number in the fewest digits; empty for none. */
    static String text(@Nullable Double value) {
        return value == null ? "" : PinField.number(value).replace('-', '−').replace("−", "-");
    }

    /**
     * The number of a text, with or without a unit behind it; null if it is blank.
     *
     * @param what what is asked for, such as "The elevation in feet"
     * @throws CannotBe if it is none
     */
    static @Nullable Double read(String what, String typed) throws CannotBe {
        String digits = typed.strip().replace(",", "").replace('−', '-').replaceFirst("\\s*[\\p{L}°%]+$", "");
        if (typed.isBlank()) {
            return null;
        }
        if (!digits.matches("[-+]?\\d{1,7}(\\.\\d{1,6})?")) {
            String shown = typed.length() > 20 ? typed.substring(0, 20) + "…" : typed;
            throw new CannotBe("“" + shown + "” is no number; " + what + " takes one, or nothing");
        }
        return Double.valueOf(digits);
    }
}
