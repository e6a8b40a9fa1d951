/** What every page of Prepare works with: the edits it makes, what it asks for, and fields bound to the show. */
@NullMarked
package crowdline.console.prepare.page;

import org.jspecify.annotations.NullMarked;
