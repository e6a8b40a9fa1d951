/** The ways of moving: each leg as equations of its own, how they are integrated, and what is seen on the way. */
@NullMarked
package crowdline.flight.leg;

import org.jspecify.annotations.NullMarked;
