/**
 * Predicts an act: air, airframe and elements in; samples, figure summaries and findings out.
 *
 * <p>A point mass with an attitude. SI units throughout, radians, seconds. The display frame is right-handed: X to the
 * commentator's right along the A-axis, Y away from the crowd along the B-axis, Z up, the origin at the datum. T is the
 * direction of flight through the air, U the pilot's up at a right angle to it, S = T × U the right wing. So an
 * aeroplane flying level to the commentator's right (T = X, U = Z) has its right wing towards the crowd (S = −Y).
 *
 * <p>Predictions are for commentary only, never for planning or judging a flight.
 */
@NullMarked
package crowdline.flight;

import org.jspecify.annotations.NullMarked;
