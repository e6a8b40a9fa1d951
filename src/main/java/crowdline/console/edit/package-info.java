/** The show that is edited in the window, one for all places, and what is done with it as a whole: undo, save, leave. */
@NullMarked
package crowdline.console.edit;

import org.jspecify.annotations.NullMarked;
