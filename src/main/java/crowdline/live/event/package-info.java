/**
 * What happens in the running show. Whether it is possible is for {@link crowdline.live.state.Live} to say.
 *
 * <p>Every time is {@code atS}: seconds on the session's monotonic scale, 0 when the show was opened. It never jumps
 * with the wall clock.
 */
@NullMarked
package crowdline.live.event;

import org.jspecify.annotations.NullMarked;
