/** Asks where the aircraft's position comes from. */
@NullMarked
package crowdline.console.receiver;

import org.jspecify.annotations.NullMarked;
