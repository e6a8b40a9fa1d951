/** Moments of the demo show as the real program has them, and the command that draws every screen with them. */
@NullMarked
package crowdline.app.demo;

import org.jspecify.annotations.NullMarked;
