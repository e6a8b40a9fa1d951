package crowdline.storage;

import crowdline.show.Severity;
import java.util.Locale;

/**
 * A finding with its place in the file.
 *
 * @param severity how bad
 * @param code stable short name in lower case with hyphens
 * @param message one sentence: what, which value, what is allowed, what to do
 * @param file the file as it was named
 * @param line counted from 1
 * @param column counted from 1, in characters
 * @param path where in the show, such as {@code acts[0].figures[3].figure}; empty for the whole file
 */
public record LocatedFinding(
        Severity severity, String code, String message, String file, int line, int column, String path) {

    /** The finding on one line, such as {@code day.json:12:5: error: …}. */
    public String asLine() {
        return file + ":" + line + ":" + column + ": " + severity.name().toLowerCase(Locale.ROOT) + ": " + message;
    }
}
