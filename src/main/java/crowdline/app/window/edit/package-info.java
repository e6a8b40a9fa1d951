/** The show that is edited: opened, judged, saved and kept. */
@NullMarked
package crowdline.app.window.edit;

import org.jspecify.annotations.NullMarked;
