/**
 * The Prepare place: its pages, of which one is in front.
 */
@NullMarked
package crowdline.console.prepare;

import org.jspecify.annotations.NullMarked;
