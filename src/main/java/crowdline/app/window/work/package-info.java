/** What the wiring works with: files on the {@code io} thread, the window that is made later, the settings in use. */
@NullMarked
package crowdline.app.window.work;

import org.jspecify.annotations.NullMarked;
