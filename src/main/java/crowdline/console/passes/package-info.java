/**
 * The passes of an act and what was learned from them, as Prepare shows them.
 */
@NullMarked
package crowdline.console.passes;

import org.jspecify.annotations.NullMarked;
