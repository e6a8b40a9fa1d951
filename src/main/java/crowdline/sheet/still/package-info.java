/** A figure in one picture, as ink: the same on a screen and on paper. */
@NullMarked
package crowdline.sheet.still;

import org.jspecify.annotations.NullMarked;
