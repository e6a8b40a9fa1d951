/**
 * Which remark when: fits remarks into the time there is, again and again as the act drifts.
 *
 * <p>{@link crowdline.patter.Planner} is pure: the same request gives the same plan, and no clock is read. Times are
 * seconds on one scale of the caller's choice, the act's. Inside, everything is counted in tenths of a second: lengths
 * and earliest starts are rounded up, latest ends down, so that no rule is broken by rounding.
 */
@NullMarked
package crowdline.patter;

import org.jspecify.annotations.NullMarked;
