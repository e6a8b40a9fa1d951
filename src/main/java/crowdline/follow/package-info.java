/**
 * Which figure is being flown, judged from readings, the clock and the hand.
 *
 * <p>A forward filter over fine bins of predicted phase, left to right through the figures of the plan. Hidden with the
 * phase are the direction along the A-axis (a dropped figure may mirror everything after it), how fast this pilot goes
 * through the figure, and how much higher or lower than predicted the aircraft flies. Beside the figures stand three states: before the
 * act, off the plan, and after it. Without readings the same filter is the clock.
 *
 * <p>Predictions serve the commentary only. Where the readings say too little the answer is "unsure".
 */
@NullMarked
package crowdline.follow;

import org.jspecify.annotations.NullMarked;
