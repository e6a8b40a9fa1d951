package crowdline.console.live.day;

import crowdline.console.live.row.ListRows;
import crowdline.console.paint.Mark;
import java.util.List;

/**
 * The duties of the day, as they are shown: the most pressing first.
 *
 * @param rows one for each duty
 */
public record DutiesView(List<Row> rows) {

    /**
     * One duty.
     *
     * @param id of its remark
     * @param state how it stands
     * @param count how often it was said of how often, such as "1 of 4"
     * @param text its words, the short ones if there are any
     * @param when when it was said, and when it is next
     */
    public record Row(String id, Mark state, String count, String text, String when) implements ListRows.Row {}

    public DutiesView {
        rows = List.copyOf(rows);
    }
}
