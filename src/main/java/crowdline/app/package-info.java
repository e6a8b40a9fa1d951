/** The program: where it starts, its commands, and the wiring of everything else by constructors. */
@NullMarked
package crowdline.app;

import org.jspecify.annotations.NullMarked;
