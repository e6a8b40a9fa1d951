package crowdline.live.state;

import crowdline.live.event.RemarkForm;

/**
 * A remark being spoken.
 *
 * @param startedAtS since when, seconds on the session's scale
 * @param filler true if it was asked for to fill a gap
 */
public record Speaking(String remarkId, RemarkForm form, double startedAtS, boolean filler) {}
