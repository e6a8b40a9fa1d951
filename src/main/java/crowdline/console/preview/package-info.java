/** The window in which paper is looked at before it is printed or saved. */
@NullMarked
package crowdline.console.preview;

import org.jspecify.annotations.NullMarked;
