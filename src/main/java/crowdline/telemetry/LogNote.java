package crowdline.telemetry;

import org.jspecify.annotations.Nullable;

/**
 * What was left out of a flight log or is odd about it.
 *
 * @param line where, from 1; null where it is about the whole file
 * @param lines how many consecutive lines it is about, 1 or more
 * @param what in plain words
 */
public record LogNote(@Nullable Integer line, int lines, String what) {
    public LogNote {
        if (lines < 1 || (line != null && line < 1)) {
            throw new IllegalArgumentException("a note about " + lines + " lines from " + line + "; both begin at 1");
        }
    }

    /** One line, such as {@code line 12: the sentence is cut short}. */
    public String text() {
        if (line == null) {
            return what;
        }
        return (lines == 1 ? "line " + line : "lines " + line + " to " + (line + lines - 1)) + ": " + what;
    }
}
