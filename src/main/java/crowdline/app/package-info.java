/** Starts the program and wires its parts by constructors; owns the clock and the {@code live} thread. */
@NullMarked
package crowdline.app;

import org.jspecify.annotations.NullMarked;
