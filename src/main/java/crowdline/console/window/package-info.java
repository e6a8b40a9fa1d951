/** Windows without what is in them: one over the main one, full screen, files dropped on it, and the way to the event thread. */
@NullMarked
package crowdline.console.window;

import org.jspecify.annotations.NullMarked;
