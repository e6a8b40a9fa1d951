/** What there is to see in a figure, found in its flight. */
@NullMarked
package crowdline.flight.moment;

import org.jspecify.annotations.NullMarked;
