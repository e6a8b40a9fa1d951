package crowdline.live.now;

import crowdline.live.state.LiveState;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the desk shows at one moment.
 *
 * @param number counts up with every snapshot, from 1
 * @param state the running show
 * @param journal whether it is being written down, as it is to be told
 * @param unwritten how many events in it the disk does not have yet: a crash at this moment would lose these
 * @param resumed true if the session goes on from an unfinished journal
 * @param notices what was found when the journal was opened, for banners
 * @param refusal why the last event was not possible, or null if it was
 */
public record LiveSnapshot(
        long number,
        LiveState state,
        JournalHealth journal,
        int unwritten,
        boolean resumed,
        List<String> notices,
        @Nullable String refusal) {
    public LiveSnapshot {
        notices = List.copyOf(notices);
    }

    /** The same with another number of events that the disk does not have yet. */
    public LiveSnapshot withUnwritten(int events) {
        return new LiveSnapshot(number, state, journal, events, resumed, notices, refusal);
    }
}
