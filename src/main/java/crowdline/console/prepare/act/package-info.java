/** The acts of a show, and the one that is chosen. */
@NullMarked
package crowdline.console.prepare.act;

import org.jspecify.annotations.NullMarked;
