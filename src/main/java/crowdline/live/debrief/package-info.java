/** What was flown and said, against what was planned. */
@NullMarked
package crowdline.live.debrief;

import org.jspecify.annotations.NullMarked;
