package crowdline.storage.journal;

import crowdline.live.event.LiveEvent;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** One line of a journal. */
sealed interface JournalLine {

    /** The first line: which show, and how the session's seconds hang on the machine's monotonic clock. */
    record Header(int version, JournalShow show, Base base) implements JournalLine {}

    /** A process took the journal up again. */
    record Resumed(Base base) implements JournalLine {}

    /** Something happened; {@code wall} and {@code writtenAtS} are one moment on both clocks. */
    record Event(Instant wall, double writtenAtS, LiveEvent event) implements JournalLine {}

    /** One moment on all clocks: the boot's name, its monotonic clock, the wall clock, the session's seconds. */
    record Base(@Nullable String bootId, long nanos, Instant wall, double sessionS) {}
}
