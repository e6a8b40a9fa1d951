/** The show that is opened and run. */
@NullMarked
package crowdline.app.window.show;

import org.jspecify.annotations.NullMarked;
