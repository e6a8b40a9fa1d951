package crowdline.console.prepare.glance;

import java.util.Collection;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the window calls what a show file has a key for. The check names the keys, as it is read beside the file. */
public final class FileKeys {
    /** A key stands in a sentence as it does in the file; what stands in quotes was written by somebody else. */
    private static final Pattern KEYS = Pattern.compile(
            "\"[^\"]*\"|“[^”]*”|" + "(?<![\\p{L}\\d.])([a-z]+(?:[A-Z][a-z0-9]*)+|(?<=the )kt(?= is))(?![\\p{L}\\d])");

    private static final Pattern TWICE = Pattern.compile("(“[^”]+”)(?:,| and) \\1");

    private static final Map<String, String> LABELS = Map.ofEntries(
            Map.entry("agreedWith", "Agreed with whom, and when"),
            Map.entry("firstSteps", "What to do first"),
            Map.entry("slotStart", "Begins"),
            Map.entry("slotMinutes", "Minutes"),
            Map.entry("heightFt", "Begins at, ft"),
            Map.entry("kt", "Begins at, kt"),
            Map.entry("durationS", "Lasts, s"),
            Map.entry("minCloudBaseFt", "from, ft"),
            Map.entry("elevationFt", "Elevation, ft"),
            Map.entry("axisBearingDeg", "Bearing of the crowd line to its right, °"),
            Map.entry("crowdToLineM", "Crowd to display line, m"),
            Map.entry("latDeg", "Latitude, longitude"),
            Map.entry("lonDeg", "Latitude, longitude"),
            Map.entry("timeZone", "Time zone"),
            Map.entry("crowdUnits", "The crowd is told"),
            Map.entry("baseFt", "Lowest height, ft"),
            Map.entry("ceilingFt", "Greatest height, ft"),
            Map.entry("halfLengthM", "To each side, m"),
            Map.entry("depthM", "Beyond the line, m"),
            Map.entry("qnhHpa", "Pressure, hPa"),
            Map.entry("temperatureC", "Temperature, °C"),
            Map.entry("windFromDeg", "Wind from, °"),
            Map.entry("windKt", "Wind, kt"),
            Map.entry("cloudBaseFt", "Cloud base, ft"));

    private FileKeys() {}

    /** Every label that a field has. */
    public static Collection<String> labels() {
        return LABELS.values();
    }

    /** A sentence with the labels of the window for the keys of the file; two keys of one field are one label. */
    public static String inWords(String sentence) {
        String labelled = KEYS.matcher(sentence)
                .replaceAll(found -> Matcher.quoteReplacement(
                        found.group(1) == null ? found.group() : "“" + label(found.group(1)) + "”"));
        return TWICE.matcher(labelled).replaceAll("$1");
    }

    /** As it stands over its field; what has none is called as the numbers of an aircraft are. */
    public static String label(String key) {
        String label = LABELS.get(key);
        return label == null ? NumberWords.of(key) : label;
    }
}
