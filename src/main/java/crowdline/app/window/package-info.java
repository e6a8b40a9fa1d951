/** The console window wired to the rest of the program by constructors; what takes time runs on the {@code io} thread. */
@NullMarked
package crowdline.app.window;

import org.jspecify.annotations.NullMarked;
