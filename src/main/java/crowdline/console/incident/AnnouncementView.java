package crowdline.console.incident;

import crowdline.console.paint.Mark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An announcement as its page shows it.
 *
 * @param id of the announcement
 * @param occasion what it is for
 * @param agreement who agreed the words, or a plain statement that nobody has
 * @param state whether it is agreed, was read out, or lacks something, for the list of all
 * @param notYet that it must not be read out yet, or null if it may
 * @param times when it was shown, and read out before
 * @param words what to say, by paragraphs, with what was filled in
 * @param blanks what is filled in, in the order it comes
 */
public record AnnouncementView(
        String id,
        String occasion,
        String agreement,
        Mark state,
        @Nullable Mark notYet,
        String times,
        List<String> words,
        List<Blank> blanks) {

    /**
     * Something to fill in.
     *
     * @param asks what it asks for
     * @param said what is said for it; empty until somebody has filled it in
     */
    public record Blank(String asks, String said) {
        /** Whether nobody has filled it in yet. */
        public boolean isMissing() {
            return said.isEmpty();
        }
    }

    public AnnouncementView {
        words = List.copyOf(words);
        blanks = List.copyOf(blanks);
    }

    /** What is still to be filled in. */
    public List<Blank> missing() {
        return blanks.stream().filter(Blank::isMissing).toList();
    }
}
