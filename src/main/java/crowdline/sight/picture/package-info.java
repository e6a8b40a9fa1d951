/**
 * What a figure looks like from the crowd line: an aircraft as a solid, its way through the air, and the picture it makes on an
 * upright pane that stands on the display line. A figure flown along the line keeps its true shape on the pane, and what is
 * further away is smaller.
 *
 * <p>A worked number, with the eye 300 m before the line and at the height of the datum: 60 m up over the line is 60 m up on
 * the pane; 60 m up and 300 m beyond the line is 30 m up on it.
 */
@NullMarked
package crowdline.sight.picture;

import org.jspecify.annotations.NullMarked;
