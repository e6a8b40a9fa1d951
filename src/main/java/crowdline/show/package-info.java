/**
 * What a show is: venue, acts, figures, elements, remarks, and the figure catalogue. Plain records without I/O.
 *
 * <p>Quantities here carry the units people at an aerodrome use (knots, feet, metres, seconds, degrees); the flight
 * prediction converts once to SI at its door.
 */
@NullMarked
package crowdline.show;

import org.jspecify.annotations.NullMarked;
