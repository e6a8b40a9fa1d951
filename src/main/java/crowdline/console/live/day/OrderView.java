package crowdline.console.live.day;

import crowdline.console.live.row.ListRows;
import crowdline.console.paint.Mark;
import java.util.List;

/**
 * The running order, as it is shown.
 *
 * @param rows one for each act, in the order they are to be flown
 * @param first the row to begin with: what is flown, or what comes next
 */
public record OrderView(List<Row> rows, int first) {

    /**
     * One act.
     *
     * @param id of the act
     * @param state what has become of it
     * @param slot when its slot begins, such as "14:42"
     * @param moved by how much that is later than planned or earlier, or empty
     * @param expected when it began or is to be expected, or empty
     * @param lasts how long it takes
     * @param title how it is announced
     * @param who who flies what
     */
    public record Row(
            String id, Mark state, String slot, String moved, String expected, String lasts, String title, String who)
            implements ListRows.Row {}

    public OrderView {
        rows = List.copyOf(rows);
    }
}
