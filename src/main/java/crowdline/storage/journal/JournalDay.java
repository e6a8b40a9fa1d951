package crowdline.storage.journal;

import java.nio.file.Path;
import java.time.Instant;

/**
 * A day on which an act was flown.
 *
 * @param journal where it is written
 * @param begun when its session began, by the wall clock
 * @param show the name of the show file
 */
public record JournalDay(Path journal, Instant begun, String show) {}
