/** Paints the path of an act from the crowd and from above, with the aircraft on it. */
@NullMarked
package crowdline.console.path;

import org.jspecify.annotations.NullMarked;
