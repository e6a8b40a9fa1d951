package crowdline.console.live;

import crowdline.console.paint.Mark;

/**
 * What a co-commentator or interpreter sees of a moment.
 *
 * @param live what is flown and said
 * @param turn who speaks next
 * @param then what is said after it, with how long until then; empty if nobody knows
 */
public record SecondView(LiveView live, Mark turn, String then) {}
