/**
 * The show file and the figure catalogue.
 *
 * <p>A show file is read in steps, each of which finds all it can: its bytes as UTF-8; its text as JSON, which gives
 * the line and column of every value; its form against the schema; its parts as records. Bad content is never an
 * exception but a {@link crowdline.show.LocatedFinding}.
 */
@NullMarked
package crowdline.storage.show;

import org.jspecify.annotations.NullMarked;
