package crowdline.show.check;

/** How bad a finding is. */
public enum Severity {
    /** Blocks: the show cannot be used as it is. */
    ERROR,
    /** Worth mending before the day. */
    WARNING,
    /** Good to know. */
    NOTE
}
