package crowdline.console.live;

import crowdline.live.event.LiveEvent;
import java.util.function.DoubleFunction;

/** What a command means in the state and the view in which it was given. */
public sealed interface Meaning {
    /**
     * It makes this happen.
     *
     * @param event made for a time, the session's seconds
     */
    record Happens(DoubleFunction<? extends LiveEvent> event) implements Meaning {}

    /** It does nothing now, and why, in one sentence. */
    record Nothing(String why) implements Meaning {}

    /** The last key was a mistake. */
    record TakenBack() implements Meaning {}
}
