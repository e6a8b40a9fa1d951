package crowdline.patter;

import crowdline.measure.Must;
import crowdline.show.figure.RemarkForm;

/**
 * A remark being said at this moment.
 *
 * @param remarkId which remark
 * @param form in which words
 * @param startedAtS when it was begun, seconds on the scale it is planned on
 * @param filler true if it was asked for to fill a gap
 */
public record Speaking(String remarkId, RemarkForm form, double startedAtS, boolean filler) {
    public Speaking {
        Must.beFinite("startedAtS", startedAtS);
    }
}
