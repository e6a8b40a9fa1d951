package crowdline.patter;

import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import org.jspecify.annotations.Nullable;

/**
 * A remark that may be said, and how long it takes this speaker.
 *
 * @param remark what to say
 * @param figureId the figure it belongs to, or null if it belongs to the act or the show and floats
 * @param full length of the full form
 * @param shortForm length of the short form, or null if there is none
 */
public record Candidate(
        Remark remark,
        @Nullable String figureId,
        SpokenLength full,
        @Nullable SpokenLength shortForm) {

    /** The length of a form, or null if there is no such form. */
    public @Nullable SpokenLength length(RemarkForm form) {
        return form == RemarkForm.FULL ? full : shortForm;
    }
}
