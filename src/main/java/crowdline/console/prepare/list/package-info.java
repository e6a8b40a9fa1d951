/** The list of a new act, as a pilot sent it. */
@NullMarked
package crowdline.console.prepare.list;

import org.jspecify.annotations.NullMarked;
