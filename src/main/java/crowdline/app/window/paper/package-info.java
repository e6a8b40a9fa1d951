/** Paper made, saved and printed. */
@NullMarked
package crowdline.app.window.paper;

import org.jspecify.annotations.NullMarked;
