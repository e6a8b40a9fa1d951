/** Figures that are not computed, drawn after their descriptions: of several aircraft, of helicopters and of parachutes. */
@NullMarked
package crowdline.sight.sketch;

import org.jspecify.annotations.NullMarked;
