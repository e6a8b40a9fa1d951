/** From a few answers about what was seen to the figures it may have been. */
@NullMarked
package crowdline.sight.clue;

import org.jspecify.annotations.NullMarked;
