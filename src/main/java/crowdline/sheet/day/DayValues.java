package crowdline.sheet.day;

import crowdline.live.debrief.Debrief;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A debrief by the names of its parts, for other programs, with another day beside it. */
public final class DayValues {
    private DayValues() {}

    /** The parts of a debrief in their order, and the other day if there is one. */
    public static Map<String, Object> of(Debrief debrief, @Nullable OtherDay other) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("showTitle", debrief.showTitle());
        all.put("runs", debrief.runs());
        all.put("remarks", debrief.remarks());
        all.put("incidents", debrief.incidents());
        all.put("announcements", debrief.announcements());
        all.put("notes", debrief.notes());
        all.put("changes", debrief.changes());
        all.put("day", debrief.day());
        if (other != null) {
            all.put("beside", of(other));
        }
        return all;
    }

    /** Another day: its name, what cannot be compared, and its debrief. */
    public static Map<String, Object> of(OtherDay other) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("name", other.name());
        all.put("lacks", other.lacks());
        all.put("debrief", other.debrief());
        return all;
    }
}
