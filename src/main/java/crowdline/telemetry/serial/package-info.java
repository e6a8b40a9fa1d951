/**
 * What is plugged in: receivers and buttons on serial ports, and whatever else gives bytes through a {@link
 * crowdline.telemetry.serial.Link}.
 *
 * <p>Each link has a reader thread of its own, which alone opens, reads and closes it; it hands over what it read and a
 * status. A read that gives less than zero means that the device is gone; whether a port says it is open proves nothing.
 * The reader then tries again by itself until it is closed.
 */
@NullMarked
package crowdline.telemetry.serial;

import org.jspecify.annotations.NullMarked;
