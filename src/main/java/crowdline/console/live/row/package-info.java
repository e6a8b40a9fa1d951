/**
 * What every row of Live is made of, and the moment it is about.
 */
@NullMarked
package crowdline.console.live.row;

import org.jspecify.annotations.NullMarked;
