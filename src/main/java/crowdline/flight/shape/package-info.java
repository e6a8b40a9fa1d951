/** Shapes of figures found for one aircraft: what a figure leaves open is drawn so that this one can fly it. */
@NullMarked
package crowdline.flight.shape;

import org.jspecify.annotations.NullMarked;
