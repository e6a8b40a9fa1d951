/**
 * A piece read: which figure, and what is said of it.
 */
@NullMarked
package crowdline.list.piece;

import org.jspecify.annotations.NullMarked;
