package crowdline.exchange;

import crowdline.show.RemarkPlace;
import crowdline.show.figure.Remark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row of remarks, as it was understood.
 *
 * @param line where it stands in the text, from 1
 * @param place where it belongs
 * @param where the same in words
 * @param remark what it becomes, or null if it is not taken
 * @param known whether the show has the remark already and the row changes it
 * @param said what is assumed, or why it is not taken, in sentences
 */
public record RemarkRow(
        int line, RemarkPlace place, String where, @Nullable Remark remark, boolean known, List<String> said) {
    public RemarkRow {
        said = List.copyOf(said);
    }
}
