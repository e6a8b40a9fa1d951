/**
 * Files: the show file and the figure catalogue as JSON, saves that never harm what was there, settings, and the JSON
 * that commands print. The only package that knows the JSON library.
 *
 * <p>A show file is read in steps, each of which finds all it can: its bytes as UTF-8; its text as JSON, which gives
 * the line and column of every value; its form against the schema; its parts as records. Bad content is never an
 * exception but a {@link crowdline.storage.LocatedFinding}.
 */
@NullMarked
package crowdline.storage;

import org.jspecify.annotations.NullMarked;
