/**
 * The incident page: the organiser's own words, and the deliberate way back.
 */
@NullMarked
package crowdline.console.incident;

import org.jspecify.annotations.NullMarked;
