/**
 * Which figure is being flown, judged from readings, the clock and the hand.
 *
 * <p>A forward filter over fine bins of predicted phase, from left to right through the figures of the plan. Each state also
 * has a direction along the A-axis (a dropped figure may mirror all that follows) and a tempo; and it believes, with a mean
 * and a variance, how far along the axis and how much higher than predicted the aircraft flies, and how much faster. A
 * straight line may be drawn out or cut short, which only moves those offsets; a line flown to a place, a height or a speed ends when
 * the aircraft is there; a way that only leads from one figure to the next fits whatever path is taken; and who flies more gently for a while than the plan
 * ever does is about to land. Beside the figures there are three more states: before the act, off the plan, and after it. Off the
 * plan, a figure that was forgotten when it began is looked for. Without readings the same filter is the clock.
 *
 * <p>{@link crowdline.follow.Fit} derives how readings are weighed. Where the Javadoc of a number says "works", no scenario of
 * {@code scripts/trial} lost more than half a per cent of the right figure; decision 81 says how that was measured.
 *
 * <p>Predictions serve the commentary only. Where the readings say too little the answer is "unsure".
 */
@NullMarked
package crowdline.follow;

import org.jspecify.annotations.NullMarked;
