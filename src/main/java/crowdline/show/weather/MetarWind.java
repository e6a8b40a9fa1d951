package crowdline.show.weather;

import crowdline.measure.Units;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The wind group {@code dddffGfmfmKT} of a METAR (WMO-No. 306, FM 15, regulation 15.5).
 *
 * @param wind what it says, or null if it is missing
 * @param notes about it
 */
record MetarWind(@Nullable Mean wind, List<String> notes) {
    private static final Pattern FORM =
            Pattern.compile("(?<from>\\d{3}|VRB|///)(?<speed>P?\\d{2,3}|//)(G(?<gust>P?\\d{2,3}|//))?(?<unit>KT|MPS)");
    private static final double MOST_KT = 100;

    /** The mean wind: true direction it comes from, and knots. */
    record Mean(double fromDeg, double kt) {}

    /** True for what can only be meant as a wind. */
    static boolean isMeant(String group) {
        return group.matches(".*(KT|MPS|KMH)") && !group.startsWith("WS");
    }

    /** @throws IllegalArgumentException if it is no wind */
    static MetarWind read(String group) {
        Matcher m = FORM.matcher(group);
        if (!m.matches()) {
            throw new IllegalArgumentException(
                    group + " is not a wind; it must be three digits of direction or VRB, two or"
                            + " three of speed, a gust if there is one, and KT or MPS, such as 24008KT or 05025G37KT");
        }
        String from = m.group("from");
        String speed = m.group("speed");
        if (from.equals("///") || speed.equals("//")) {
            return new MetarWind(null, List.of("The wind is missing in " + group + "; it stays as it was"));
        }
        double kt = kt(speed, m.group("unit"));
        if (kt > MOST_KT) {
            throw new IllegalArgumentException(String.format(
                    Locale.UK, "%s is a wind of %.0f kt; it must be from 0 to %.0f kt", group, kt, MOST_KT));
        }
        if (from.equals("VRB")) {
            return new MetarWind(
                    new Mean(0, 0),
                    List.of(String.format(
                            Locale.UK, "The wind is variable at %.0f kt; without a direction it counts as calm", kt)));
        }
        double fromDeg = Double.parseDouble(from);
        if (fromDeg > 360 || (fromDeg == 0 && kt > 0)) {
            throw new IllegalArgumentException(
                    group + " has the direction " + from + "; it must be from 010 to 360, or 00000 for calm");
        }
        String gust = m.group("gust");
        return new MetarWind(
                new Mean(fromDeg, kt),
                gust == null
                        ? List.of()
                        : List.of("The gusts of " + group + " are not used; the wind blows at its mean"));
    }

    private static double kt(String speed, String unit) {
        double value = Double.parseDouble(speed.replace("P", ""));
        return unit.equals("KT") ? value : Units.ktFromMps(value);
    }
}
