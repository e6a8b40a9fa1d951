/**
 * The running order and the duties of the day over Live, and what was told of them.
 */
@NullMarked
package crowdline.console.live.day;

import org.jspecify.annotations.NullMarked;
