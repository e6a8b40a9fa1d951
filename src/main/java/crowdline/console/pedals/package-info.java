/**
 * Pedals and remotes: which button gives which command, learned by pressing it.
 */
@NullMarked
package crowdline.console.pedals;

import org.jspecify.annotations.NullMarked;
