/** What is walked through before a show and looked at after it. */
@NullMarked
package crowdline.app.window.walk;

import org.jspecify.annotations.NullMarked;
