/**
 * The remark to say now, how long it takes and how far it is.
 */
@NullMarked
package crowdline.console.live.say;

import org.jspecify.annotations.NullMarked;
