/**
 * What a piece says of a figure, gathered until its line is done.
 */
@NullMarked
package crowdline.list.draft;

import org.jspecify.annotations.NullMarked;
