/**
 * What a show file may hold at most and which numbers it may have, and how what somebody wrote is compared with names.
 */
@NullMarked
package crowdline.show.bounds;

import org.jspecify.annotations.NullMarked;
