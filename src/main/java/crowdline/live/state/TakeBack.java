package crowdline.live.state;

import crowdline.live.event.LiveEvent;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How to take back something done by hand.
 *
 * @param event what was done
 * @param course the course before it, or null if it did not change the course
 * @param talk what was said before it, or null if it did not change that
 * @param notes the notes before it, or null if it was none
 * @param day the running order before it, or null if it did not change that
 * @param announced the announcements before it, or null if it did not change them
 * @param whoseTurn whose turn it was before it, or null if it did not change that
 */
public record TakeBack(
        LiveEvent event,
        @Nullable Course course,
        @Nullable Talk talk,
        @Nullable List<Note> notes,
        @Nullable Day day,
        @Nullable Announced announced,
        @Nullable WhoseTurn whoseTurn) {
    public TakeBack {
        notes = notes == null ? null : List.copyOf(notes);
    }

    TakeBack(LiveEvent event, @Nullable Course course, @Nullable Talk talk) {
        this(event, course, talk, null, null, null, null);
    }

    static TakeBack ofNotes(LiveEvent event, List<Note> notes) {
        return new TakeBack(event, null, null, notes, null, null, null);
    }

    static TakeBack ofDay(LiveEvent event, Day day) {
        return new TakeBack(event, null, null, null, day, null, null);
    }

    static TakeBack ofAnnounced(LiveEvent event, Announced announced) {
        return new TakeBack(event, null, null, null, null, announced, null);
    }

    static TakeBack ofTurn(LiveEvent event, WhoseTurn before) {
        return new TakeBack(event, null, null, null, null, null, before);
    }

    /** With the course before it as well. */
    TakeBack with(Course before) {
        return new TakeBack(event, before, talk, notes, day, announced, whoseTurn);
    }

    /** False once the clock or the aircraft has moved the act on since: nobody expects to be thrown back that far. */
    boolean isPossible() {
        return course != null || talk != null || notes != null || day != null || announced != null || whoseTurn != null;
    }

    /** After a step that no hand made. */
    TakeBack overtaken() {
        return course == null ? this : new TakeBack(event, null, null);
    }
}
