/** The organiser's words for what nobody can plan. */
@NullMarked
package crowdline.console.prepare.announce;

import org.jspecify.annotations.NullMarked;
