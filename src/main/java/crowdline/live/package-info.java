/**
 * The running show as a state machine: state and event give the next state. No threads and no clock of its own.
 *
 * <p>Every time here is {@code atS}: seconds on the session's monotonic scale, 0 when the show was opened. It never jumps
 * with the wall clock.
 */
@NullMarked
package crowdline.live;

import org.jspecify.annotations.NullMarked;
