/** The air an aircraft flies in: its density by height, and the wind. */
@NullMarked
package crowdline.flight.air;

import org.jspecify.annotations.NullMarked;
