package crowdline.telemetry;

import java.time.LocalTime;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A B record.
 *
 * @param time UTC
 * @param valid whether it is a position in three dimensions (A), not one without GNSS height or none at all (V)
 * @param pressureM height in the standard atmosphere, against 1,013.25 hPa
 * @param gnssM height by satellite
 */
record IgcPosition(LocalTime time, double latDeg, double lonDeg, boolean valid, int pressureM, int gnssM) {
    private static final Pattern RECORD =
            Pattern.compile("B(\\d\\d)(\\d\\d)(\\d\\d)(\\d\\d)(\\d{5})([NS])(\\d{3})(\\d{5})([EW])([AV])"
                    + "(\\d{5}|-\\d{4})(\\d{5}|-\\d{4}).*");

    /** Null where the record is damaged. */
    static @Nullable IgcPosition read(String line, IgcExtensions extensions) {
        Matcher m = RECORD.matcher(line);
        if (!m.matches()) {
            return null;
        }
        int hour = Integer.parseInt(m.group(1));
        int minute = Integer.parseInt(m.group(2));
        int second = Integer.parseInt(m.group(3));
        double lat = degrees(m.group(4), m.group(5) + extensions.digits(line, "LAD"));
        double lon = degrees(m.group(7), m.group(8) + extensions.digits(line, "LOD"));
        if (hour > 23 || minute > 59 || second > 59 || !(lat <= 90) || !(lon <= 180)) {
            return null;
        }
        String decimals = extensions.digits(line, "TDS");
        double ofSecond = decimals.isEmpty() ? 0 : Double.parseDouble("0." + decimals);
        return new IgcPosition(
                LocalTime.of(hour, minute, second, (int) Math.min(999_999_999, Math.round(ofSecond * 1e9))),
                m.group(6).equals("S") ? -lat : lat,
                m.group(9).equals("W") ? -lon : lon,
                m.group(10).equals("A"),
                Integer.parseInt(m.group(11)),
                Integer.parseInt(m.group(12)));
    }

    /** Two digits of whole minutes, then decimals, as many as there are; not a number where minutes reach 60. */
    private static double degrees(String whole, String digits) {
        double minutes = Double.parseDouble(digits.substring(0, 2) + "." + digits.substring(2));
        return minutes < 60 ? Integer.parseInt(whole) + minutes / 60 : Double.NaN;
    }
}
