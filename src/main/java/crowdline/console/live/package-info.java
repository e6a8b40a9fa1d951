/**
 * The Live place: what it shows as one immutable record, and the rows that paint it.
 */
@NullMarked
package crowdline.console.live;

import org.jspecify.annotations.NullMarked;
