/**
 * The figure that is being flown, and what may be said of one that nobody planned.
 */
@NullMarked
package crowdline.console.live.now;

import org.jspecify.annotations.NullMarked;
