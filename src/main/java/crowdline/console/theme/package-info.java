/**
 * Colours and type of the three themes, the zoom, and the sums that show that they can be read.
 */
@NullMarked
package crowdline.console.theme;

import org.jspecify.annotations.NullMarked;
