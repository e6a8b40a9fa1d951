/** How long figures and words take: passes, and the pace of whoever speaks. */
@NullMarked
package crowdline.app.window.time;

import org.jspecify.annotations.NullMarked;
