/**
 * Which figure is being flown, judged from readings, the clock and the hand.
 *
 * <p>A forward filter over fine bins of predicted phase, left to right through the figures of the plan. Hidden with the
 * phase are the direction along the A-axis (a dropped figure may mirror everything after it), how fast this pilot goes
 * through the figure, and how far along the axis and how much higher than predicted the aircraft flies: a mean and a
 * variance with every state. A straight line may be drawn out or cut short, which only moves that offset; one flown to a
 * place or a height ends when the aircraft is there. Beside the figures stand three states: before the act, off the plan,
 * and after it. Without readings the same filter is the clock.
 *
 * <p>Predictions serve the commentary only. Where the readings say too little the answer is "unsure".
 */
@NullMarked
package crowdline.follow;

import org.jspecify.annotations.NullMarked;
