/**
 * The Debrief place: what was flown and marked against what was planned, and what to change.
 */
@NullMarked
package crowdline.console.debrief;

import org.jspecify.annotations.NullMarked;
