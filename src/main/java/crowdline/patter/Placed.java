package crowdline.patter;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import org.jspecify.annotations.Nullable;

/**
 * A remark with its time.
 *
 * @param remarkId which remark
 * @param figureId the figure it belongs to, or null if it floats
 * @param kind its kind
 * @param form in which words
 * @param startS when to begin, seconds
 * @param endS when it is over at this speaker's likely pace, seconds
 * @param tight true if it fits only as long as the figure flown meanwhile is not a short one of its kind: past the lower
 *     end of the figure's band it would run over its own window, into the next call or into the next figure
 */
public record Placed(
        String remarkId,
        @Nullable String figureId,
        RemarkKind kind,
        RemarkForm form,
        double startS,
        double endS,
        boolean tight) {}
