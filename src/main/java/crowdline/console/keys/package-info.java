/**
 * Commands, their keys, and the one dispatcher that hears them whatever has the focus.
 */
@NullMarked
package crowdline.console.keys;

import org.jspecify.annotations.NullMarked;
