package crowdline.live;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the desk shows at one moment.
 *
 * @param number counts up with every snapshot, from 1
 * @param state the running show
 * @param journal whether it is being written down
 * @param resumed true if the session goes on from an unfinished journal
 * @param notices what was found when the journal was opened, for banners
 * @param refusal why the last event was not possible, or null if it was
 */
public record LiveSnapshot(
        long number,
        LiveState state,
        JournalHealth journal,
        boolean resumed,
        List<String> notices,
        @Nullable String refusal) {
    public LiveSnapshot {
        notices = List.copyOf(notices);
    }
}
