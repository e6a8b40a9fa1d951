/** What flies and where it is: mass, wing and engine as numbers in SI units, and place, speed and attitude. */
@NullMarked
package crowdline.flight.body;

import org.jspecify.annotations.NullMarked;
