package crowdline.storage.unsaved;

import crowdline.show.Show;
import java.nio.file.Path;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A show as it was edited and not saved.
 *
 * @param file the file it came from, or null if it never had one
 * @param sha256 what was in that file when it was read, in hexadecimal; empty without a file
 * @param at when it was kept
 * @param show the show as it was then
 */
public record UnsavedEdit(@Nullable Path file, String sha256, Instant at, Show show) {}
