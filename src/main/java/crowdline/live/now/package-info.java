/** What can be read off the running show at one moment: what is flown, what comes, what may be said, what to show. */
@NullMarked
package crowdline.live.now;

import org.jspecify.annotations.NullMarked;
