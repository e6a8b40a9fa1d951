<<<<<<< HEAD
/** Starts the program and wires its parts by constructors; owns the clock and the {@code live} thread. */
=======
/** The program: where it starts, its commands, and the wiring of everything else by constructors. */
>>>>>>> storage
@NullMarked
package crowdline.app;

import org.jspecify.annotations.NullMarked;
