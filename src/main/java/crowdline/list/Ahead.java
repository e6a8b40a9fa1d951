package crowdline.list;

import crowdline.list.draft.Draft;
import org.jspecify.annotations.Nullable;

/** What was said ahead of the figure it is said of, until that figure comes. */
final class Ahead {
    private @Nullable Draft waiting;

    boolean isEmpty() {
        return waiting == null;
    }

    void add(Draft draft) {
        giveTo(draft);
        waiting = draft;
    }

    void giveTo(Draft draft) {
        if (waiting != null) {
            draft.take(waiting);
            draft.takeInBefore(waiting);
            waiting = null;
        }
    }

    /** What no figure came for; null if there is nothing. It is not kept. */
    @Nullable
    Draft left() {
        Draft left = waiting;
        waiting = null;
        return left;
    }
}
