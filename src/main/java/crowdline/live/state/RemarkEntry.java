package crowdline.live.state;

import crowdline.show.figure.RemarkForm;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;

/**
 * What became of a remark.
 *
 * @param remarkId its id
 * @param form which form was spoken, or null if it was skipped
 * @param outcome what became of it
 * @param filler true if it was asked for to fill a gap
 * @param startedAtS when it was begun, or null if that was not marked
 * @param endedAtS when it ended or was skipped, seconds on the session's scale
 * @param actId the act at that moment, or null
 * @param figureId the figure at that moment, or null
 */
public record RemarkEntry(
        String remarkId,
        @Nullable RemarkForm form,
        Outcome outcome,
        boolean filler,
        @Nullable Double startedAtS,
        double endedAtS,
        @Nullable String actId,
        @Nullable String figureId) {

    /** True if nothing more is to be done about it; a remark cut short may come again. */
    public boolean settles() {
        return outcome != Outcome.CUT_SHORT;
    }

    /**
     * When it was begun, no later than it ended, seconds on the session's scale. Of what was only marked as said that is not
     * known; it took as long as its words take.
     *
     * @param spokenS how long that is, seconds
     */
    public double beganAtS(DoubleSupplier spokenS) {
        return startedAtS == null ? endedAtS - spokenS.getAsDouble() : Math.min(startedAtS, endedAtS);
    }

    /** What became of a remark. */
    public enum Outcome {
        SAID,
        SKIPPED,
        /** Taken, and its time on the screen passed: it counts as said for the plan, though no key said so. */
        SHOWN,
        /** Begun, and another remark, a call that was due, or an incident came before it was over. */
        CUT_SHORT
    }
}
