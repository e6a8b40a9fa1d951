/**
 * Makes an act of a pilot's list: each line a figure drawn for the aircraft and laid out with the others, or a time.
 */
@NullMarked
package crowdline.arrange;

import org.jspecify.annotations.NullMarked;
