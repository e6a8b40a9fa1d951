/** The foot line and the messages of the session. */
@NullMarked
package crowdline.console.foot;

import org.jspecify.annotations.NullMarked;
