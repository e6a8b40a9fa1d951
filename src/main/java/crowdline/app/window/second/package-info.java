/**
 * The second window by itself: the program started again on a show that runs already.
 */
@NullMarked
package crowdline.app.window.second;

import org.jspecify.annotations.NullMarked;
