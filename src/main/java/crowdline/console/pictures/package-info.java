/** Paints every screen into picture files without opening a window. */
@NullMarked
package crowdline.console.pictures;

import org.jspecify.annotations.NullMarked;
