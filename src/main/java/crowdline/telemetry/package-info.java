/**
 * From bytes to where the aircraft is: receivers, flight logs and what is made of them.
 *
 * <p>Positions come in as latitude, longitude and height; they leave as {@link crowdline.telemetry.Reading}, in the
 * display frame: X along the A-axis to the commentator's right, Y away from the crowd, Z up, metres from the datum.
 */
@NullMarked
package crowdline.telemetry;

import org.jspecify.annotations.NullMarked;
