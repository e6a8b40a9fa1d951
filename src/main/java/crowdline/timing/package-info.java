/**
 * How long figures take: a plan of times for an act, and a belief about each duration that learns from passes.
 *
 * <p>Everything here is arithmetic on numbers it is given. Times are seconds on the act's own scale, unless said. A band
 * is a central predictive interval: the chance that the next value lies inside it is the level named.
 */
@NullMarked
package crowdline.timing;

import org.jspecify.annotations.NullMarked;
