package crowdline.show.check;

import java.util.Locale;

/**
 * A finding with its place in the file.
 *
 * @param severity how bad
 * @param code stable short name in lower case with hyphens
 * @param message one sentence: what, which value, what is allowed, what to do
 * @param file the file as it was named; empty for what stands in none
 * @param line counted from 1; 0 for what stands in no line
 * @param column counted from 1, in characters; 0 for what stands in no line
 * @param path where in the show, such as {@code acts[0].figures[3].figure}; empty for the whole file
 */
public record LocatedFinding(
        Severity severity, String code, String message, String file, int line, int column, String path) {

    /** A finding of what stands in no line of a file, such as a prediction. */
    public static LocatedFinding inNoLine(Severity severity, String code, String message) {
        return new LocatedFinding(severity, code, message, "", 0, 0, "");
    }

    /** The finding on one line, such as {@code day.json:12:5: error: …}; what stands in no line has no place before it. */
    public String asLine() {
        String place = line == 0 && file.isEmpty() ? "" : file + ":" + line + ":" + column + ": ";
        return place + severity.name().toLowerCase(Locale.ROOT) + ": " + message;
    }
}
