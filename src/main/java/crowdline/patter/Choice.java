package crowdline.patter;

import crowdline.show.figure.RemarkForm;

/**
 * One form of one remark with the starts it may have.
 *
 * @param length ticks it takes
 * @param value what it is worth
 * @param starts when it may begin
 * @param wishedStart when it would best begin if nothing stands against it
 * @param kept true if it was on the plan before
 */
record Choice(RemarkForm form, int length, long value, Starts starts, int wishedStart, boolean kept) {}
