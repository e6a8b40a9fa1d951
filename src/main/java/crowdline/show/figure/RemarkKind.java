package crowdline.show.figure;

/** The kinds of remark, most pressing first when time is short. */
public enum RemarkKind {
    /** Must be said today: a thank-you, a safety notice. */
    DUTY,
    /** Announces a figure a moment before it. */
    CALL,
    /** Says what a figure is. */
    EXPLANATION,
    /** A number or a story worth hearing. */
    FACT,
    /** For a gap. */
    FILLER
}
