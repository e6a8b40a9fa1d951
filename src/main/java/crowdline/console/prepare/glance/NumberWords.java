package crowdline.console.prepare.glance;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What the numbers of an aircraft are called, from the keys that a show file has for them. */
public final class NumberWords {
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("Kg", "kg"),
            Map.entry("Kw", "kW"),
            Map.entry("Kn", "kN"),
            Map.entry("M2", "m²"),
            Map.entry("Rpm", "rpm"),
            Map.entry("Kt", "kt"),
            Map.entry("DegPerS", "°/s"),
            Map.entry("FtPerTurn", "ft a turn"),
            Map.entry("M", "m"),
            Map.entry("G", "g"),
            Map.entry("S", "s"));

    private NumberWords() {}

    /** A key of the show file in words, with its unit, such as "wing area, m²". */
    public static String of(String key) {
        for (String end : List.of("FtPerTurn", "DegPerS", "Rpm", "M2", "Kg", "Kw", "Kn", "Kt", "M", "G", "S")) {
            if (key.endsWith(end)) {
                return plain(key.substring(0, key.length() - end.length())) + ", " + UNITS.get(end);
            }
        }
        return plain(key);
    }

    private static String plain(String camel) {
        return camel.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }
}
