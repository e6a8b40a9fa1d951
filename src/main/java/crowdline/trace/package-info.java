/**
 * Figures found in a flight of which there is no plan.
 *
 * <p>A track is positions and heights, smoothed a little. It could be cut wherever it is about level, for there figures begin
 * and end; of all ways to cut it the one is taken whose parts together are the likeliest ({@link crowdline.trace.Finder}). A part
 * is a line, a way, nothing known, or compared with every figure of the catalogue as the kind of aircraft flies it ({@link
 * crowdline.trace.KnownShapes}), by the direction in which it flies and how fast, from beginning to end, so that neither the
 * size nor the place matters. Receivers tell no attitude: a roll along a line, upright or inverted, and what a flick does
 * within a loop leave no trace in a track. So a straight level line is only that, perhaps with rolls; and of figures that
 * look the same, the plainest is named first.
 */
@NullMarked
package crowdline.trace;

import org.jspecify.annotations.NullMarked;
