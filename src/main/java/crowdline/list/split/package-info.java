/**
 * A text parted into sentences and pieces.
 */
@NullMarked
package crowdline.list.split;

import org.jspecify.annotations.NullMarked;
