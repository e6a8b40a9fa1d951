package crowdline.storage.journal;

import crowdline.live.state.LiveState;
import java.nio.file.Path;
import java.time.Instant;

/**
 * A journal only read.
 *
 * @param path where it is
 * @param state the state after everything that can be read
 * @param zero the wall clock at second 0 of the session
 * @param damagedLines how many of its lines cannot be read
 */
public record JournalReading(Path path, LiveState state, Instant zero, int damagedLines) {}
