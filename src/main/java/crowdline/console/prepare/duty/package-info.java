/** The page of Prepare for what must be said on the day, and for what its gaps are filled with. */
@NullMarked
package crowdline.console.prepare.duty;

import org.jspecify.annotations.NullMarked;
