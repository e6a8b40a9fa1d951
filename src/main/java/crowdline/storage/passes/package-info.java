/** Timed passes beside their show, and the tables of times they come from. */
@NullMarked
package crowdline.storage.passes;

import org.jspecify.annotations.NullMarked;
