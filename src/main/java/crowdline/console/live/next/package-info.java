/**
 * The figure that comes next.
 */
@NullMarked
package crowdline.console.live.next;

import org.jspecify.annotations.NullMarked;
