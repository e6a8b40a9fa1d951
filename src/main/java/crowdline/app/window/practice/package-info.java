/** A second show to practise on. */
@NullMarked
package crowdline.app.window.practice;

import org.jspecify.annotations.NullMarked;
