/** The aircraft of a show, and the kinds of aircraft with the numbers that are typical of them. */
@NullMarked
package crowdline.show.aircraft;

import org.jspecify.annotations.NullMarked;
