/**
 * The Prepare place: the show at a glance, its figures, remarks and findings.
 */
@NullMarked
package crowdline.console.prepare;

import org.jspecify.annotations.NullMarked;
