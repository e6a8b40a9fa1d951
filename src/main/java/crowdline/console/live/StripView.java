package crowdline.console.live;

import crowdline.console.paint.Mark;

/**
 * The strip along the top.
 *
 * @param act how the act is announced
 * @param timeInAct such as "4:12 of 12:00"
 * @param drift early or late
 * @param source what moves the position
 * @param sureness how sure the position is
 * @param reading age of the last reading
 * @param hour the clock at the venue
 */
public record StripView(
        String act, String timeInAct, Mark drift, Mark source, Mark sureness, Mark reading, String hour) {}
