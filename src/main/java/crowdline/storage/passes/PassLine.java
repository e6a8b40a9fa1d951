package crowdline.storage.passes;

import crowdline.timing.Pass;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** One line of a file of passes. */
sealed interface PassLine {

    /** A pass, once and for all as it was timed. */
    record Timed(Pass pass) implements PassLine {}

    /**
     * What somebody decided about a pass later; of two decisions the later holds.
     *
     * @param counts whether it counts from now on, or null if that stays
     * @param note the note from now on, or null if that stays
     */
    record Change(
            String id,
            Instant at,
            @Nullable Boolean counts,
            @Nullable String note) implements PassLine {
        Pass applied(Pass pass) {
            Pass counting = counts == null ? pass : pass.counting(counts);
            return note == null ? counting : counting.withNote(note);
        }
    }
}
