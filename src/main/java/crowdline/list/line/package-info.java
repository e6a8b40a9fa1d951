/**
 * A line of a list as it was read.
 */
@NullMarked
package crowdline.list.line;

import org.jspecify.annotations.NullMarked;
