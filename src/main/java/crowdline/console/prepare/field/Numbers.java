package crowdline.console.prepare.field;

import crowdline.edit.act.CannotBe;
import crowdline.measure.TypedNumber;
import crowdline.show.bounds.Written;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Reads numbers as they are typed, and writes them so. */
public final class Numbers {
    private Numbers() {}

    /** A number in the fewest digits; empty for none. */
    public static String text(@Nullable Double value) {
        if (value == null) {
            return "";
        }
        return value == Math.rint(value) ? String.format(Locale.UK, "%.0f", value) : String.valueOf(value);
    }

    /**
     * The number of a text, with or without a unit behind it; null if it is blank.
     *
     * @param what what is asked for, such as "Elevation, ft"; its unit says which may be typed
     * @throws CannotBe if it is none
     */
    public static @Nullable Double read(String what, String typed) throws CannotBe {
        if (typed.isBlank()) {
            return null;
        }
        OptionalDouble number = TypedNumber.read(typed, what);
        if (number.isEmpty()) {
            throw new CannotBe("“" + Written.brief(typed, 21) + "” is no number; " + what + " takes one, or nothing");
        }
        return number.getAsDouble();
    }
}
