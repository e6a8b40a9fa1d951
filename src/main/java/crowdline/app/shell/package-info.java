/** What the machine gives the program: folders, the terminal, the screen; and what was asked for on the command line. */
@NullMarked
package crowdline.app.shell;

import org.jspecify.annotations.NullMarked;
