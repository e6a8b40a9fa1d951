/**
 * The window: one frame with its places, one table of commands and keys, one courier to the event thread.
 *
 * <p>View models are records that hold strings and numbers already decided and import no Swing; views paint them.
 */
@NullMarked
package crowdline.console;

import org.jspecify.annotations.NullMarked;
