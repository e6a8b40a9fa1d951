/**
 * The Debrief place: what was flown and said against what was planned, and what to change.
 */
@NullMarked
package crowdline.console.debrief;

import org.jspecify.annotations.NullMarked;
