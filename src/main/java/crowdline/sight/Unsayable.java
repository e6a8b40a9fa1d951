package crowdline.sight;

import java.util.Locale;

/** Thrown while a fact is made of a number that nobody could say. The message tells the number and what is wrong with it. */
public final class Unsayable extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private static final double WRITTEN_OUT = 1e15;

    /** @param unit with a space before it, or empty */
    Unsayable(double value, String unit) {
        super(number(value) + unit + (value < 0 ? ", below nothing" : Double.isNaN(value) ? "" : ", beyond words"));
    }

    private static String number(double value) {
        return Double.isNaN(value)
                ? "no number of"
                : Math.abs(value) < WRITTEN_OUT ? String.format(Locale.UK, "%,.0f", value) : String.valueOf(value);
    }
}
