package crowdline.console.words;

import crowdline.console.paint.Mark;
import java.util.List;

/**
 * The computed facts of the chosen place.
 *
 * @param title what they are computed for, or why there are none
 * @param rows the most telling first
 * @param chosen which of them is chosen, -1 for none
 */
public record FactsView(String title, List<FactRow> rows, int chosen) {
    public FactsView {
        rows = List.copyOf(rows);
    }

    /**
     * A fact in the list.
     *
     * @param number as computed, with its unit
     * @param text what would be said
     * @param mark that it is a remark already, or how long it takes against the time there is
     * @param made whether there is a fact; else the text says why not
     */
    public record FactRow(String number, String text, Mark mark, boolean made) {}

    /** Whether the chosen row is a fact that can become a remark. */
    public boolean takesChosen() {
        return chosen >= 0 && rows.get(chosen).made();
    }
}
