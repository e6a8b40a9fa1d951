/** The tour of the demo show, a row of words under the real screens. */
@NullMarked
package crowdline.console.tour;

import org.jspecify.annotations.NullMarked;
