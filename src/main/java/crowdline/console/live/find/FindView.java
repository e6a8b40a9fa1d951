package crowdline.console.live.find;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was found by a few letters.
 *
 * @param rows the best first, each with the digit that opens it
 * @param open what is shown beside them, or null if nothing was found
 * @param hint what to do, or what stands in the way
 */
public record FindView(List<Row> rows, @Nullable Page open, String hint) {
    /** As many as can be read at a glance. */
    static final int MOST = 6;

    /**
     * Something that was found.
     *
     * @param kind what it is, in a word
     * @param isOpen whether it is the one shown beside
     */
    public record Row(int digit, String kind, String name, boolean isOpen) {}

    /**
     * What is said of one of them.
     *
     * @param sayIt how to say its name, or empty
     * @param text what is said of it, in one text
     */
    public record Page(String name, String sayIt, String text) {}

    public FindView {
        rows = List.copyOf(rows);
    }
}
