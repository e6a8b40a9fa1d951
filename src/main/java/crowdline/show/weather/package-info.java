/** The air of the day, read from an aerodrome's weather report. */
@NullMarked
package crowdline.show.weather;

import org.jspecify.annotations.NullMarked;
