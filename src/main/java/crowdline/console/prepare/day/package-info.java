/** The day and the place: title, date, crowd line, limits and air. */
@NullMarked
package crowdline.console.prepare.day;

import org.jspecify.annotations.NullMarked;
