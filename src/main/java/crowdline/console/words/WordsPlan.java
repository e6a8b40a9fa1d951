package crowdline.console.words;

import crowdline.speech.plain.ActReading;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What takes too long to be found at every letter and comes when it is ready.
 *
 * @param remarks what the plan makes of each remark, by its id
 * @param reads how the remarks of each act read together, in a sentence, by its id
 */
public record WordsPlan(Map<String, PlannedRemark> remarks, Map<String, String> reads) {
    static final WordsPlan NONE = new WordsPlan(Map.of(), Map.of());

    public WordsPlan {
        remarks = Map.copyOf(remarks);
        reads = Map.copyOf(reads);
    }

    PlannedRemark remark(String id) {
        return remarks.getOrDefault(id, PlannedRemark.NONE);
    }

    String reads(@Nullable String actId) {
        return reads.getOrDefault(actId == null ? ActReading.SHOW : actId, "");
    }
}
