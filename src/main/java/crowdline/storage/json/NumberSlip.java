package crowdline.storage.json;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number that was written as text: how to write it. */
public final class NumberSlip {
    private static final Pattern PLAIN = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
    /** 2,350 and 1,013.25: commas between thousands. */
    private static final Pattern THOUSANDS = Pattern.compile("-?[1-9][0-9]{0,2}(,[0-9]{3})+(\\.[0-9]+)?");

    private static final Pattern COMMA = Pattern.compile("-?[0-9]+,[0-9]+");
    /** 235 ft, 12 °C. */
    private static final Pattern WITH_UNIT = Pattern.compile("(-?[0-9]+(?:\\.[0-9]+)?) ?[\\p{L}°%²/]{1,12}");

    private NumberSlip() {}

    /** What to do about it, with a semicolon before it; empty if it is no number at all. */
    public static String hint(String text) {
        // A minus as it is printed, and spaces before and after, are no more than that.
        String written = text.strip().replace('\u2212', '-');
        if (PLAIN.matcher(written).matches()) {
            return "; take the quotes away";
        }
        if (THOUSANDS.matcher(written).matches()) {
            return "; write " + written.replace(",", "") + ", without the comma and without quotes";
        }
        if (COMMA.matcher(written).matches()) {
            return "; write " + written.replace(',', '.') + ", with a full stop and without quotes";
        }
        Matcher unit = WITH_UNIT.matcher(written);
        return unit.matches() ? "; write " + unit.group(1) + " alone, as the key has its unit" : "";
    }
}
