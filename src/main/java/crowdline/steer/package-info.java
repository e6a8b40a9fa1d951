/** What lets the aircraft begin the act and move it on: what the follower says becomes events of the running show. */
@NullMarked
package crowdline.steer;

import org.jspecify.annotations.NullMarked;
