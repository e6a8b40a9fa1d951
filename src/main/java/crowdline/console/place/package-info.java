/** What all places share: which there are, and what stands in one while there is no show. */
@NullMarked
package crowdline.console.place;

import org.jspecify.annotations.NullMarked;
