package crowdline.live.event;

import crowdline.measure.Must;
import crowdline.show.figure.RemarkForm;

/** What is said, and what is left out. */
public sealed interface TalkEvent extends LiveEvent {

    /** The id of the remark. */
    String remarkId();

    /** The commentator begins to speak a remark. */
    record RemarkStarted(double atS, String remarkId, RemarkForm form) implements TalkEvent {
        public RemarkStarted {
            Must.beTime("atS", atS);
            Must.beSaid("remark id", remarkId);
        }
    }

    /** A remark was said to its end, whether or not its start was marked. */
    record RemarkSaid(double atS, String remarkId, RemarkForm form) implements TalkEvent {
        public RemarkSaid {
            Must.beTime("atS", atS);
            Must.beSaid("remark id", remarkId);
        }
    }

    /**
     * What was taken leaves the screen by itself: its time is over, or a call is due.
     *
     * @param cutShort true if it was not over yet
     */
    record RemarkLeft(double atS, String remarkId, boolean cutShort) implements TalkEvent {
        public RemarkLeft {
            Must.beTime("atS", atS);
            Must.beSaid("remark id", remarkId);
        }
    }

    /**
     * What was planned stood on the screen for its time, and no key said that it was said. Only of what is remembered over the
     * day is it written down.
     *
     * @param sinceS when it came to the screen to be said, not after {@code atS}
     */
    record RemarkShown(double atS, String remarkId, RemarkForm form, double sinceS) implements TalkEvent {
        public RemarkShown {
            Must.beTime("atS", atS);
            Must.beSaid("remark id", remarkId);
            Must.beFinite("sinceS", sinceS);
        }
    }

    /** A remark will not be said. */
    record RemarkSkipped(double atS, String remarkId) implements TalkEvent {
        public RemarkSkipped {
            Must.beTime("atS", atS);
            Must.beSaid("remark id", remarkId);
        }
    }

    /** The commentator asked for something to fill a gap and begins to speak it. */
    record FillerTaken(double atS, String remarkId, RemarkForm form) implements TalkEvent {
        public FillerTaken {
            Must.beTime("atS", atS);
            Must.beSaid("remark id", remarkId);
        }
    }
}
