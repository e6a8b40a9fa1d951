package crowdline.sheet.day;

import crowdline.live.debrief.Debrief;
import java.time.LocalTime;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A day that another is set beside.
 *
 * @param name such as "12 June 2026"
 * @param hour the clock at the venue at a second of its session
 * @param lacks what cannot be compared, a sentence each
 */
public record OtherDay(String name, Debrief debrief, DoubleFunction<LocalTime> hour, List<String> lacks) {
    public OtherDay {
        lacks = List.copyOf(lacks);
    }
}
