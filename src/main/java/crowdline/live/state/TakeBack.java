package crowdline.live.state;

import crowdline.live.event.LiveEvent;
import org.jspecify.annotations.Nullable;

/**
 * How to take back something done by hand.
 *
 * @param event what was done
 * @param course the course before it, or null if it did not change the course
 * @param talk what was said before it, or null if it did not change that
 */
public record TakeBack(
        LiveEvent event, @Nullable Course course, @Nullable Talk talk) {

    /** False once the clock or the aircraft has moved the act on since: nobody expects to be thrown back that far. */
    boolean isPossible() {
        return course != null || talk != null;
    }

    /** After a step that no hand made. */
    TakeBack overtaken() {
        return course == null ? this : new TakeBack(event, null, null);
    }
}
