/** The commands that print. Each calls a package of the domain and needs no screen. */
@NullMarked
package crowdline.app.command;

import org.jspecify.annotations.NullMarked;
