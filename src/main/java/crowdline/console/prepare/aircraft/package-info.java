/** What flies. */
@NullMarked
package crowdline.console.prepare.aircraft;

import org.jspecify.annotations.NullMarked;
