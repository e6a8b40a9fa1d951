/**
 * The strip over Live: which act, how late, what is amiss.
 */
@NullMarked
package crowdline.console.live.strip;

import org.jspecify.annotations.NullMarked;
