package crowdline.live.event;

/** What moves the live position, and how a boundary between two figures was marked. */
public enum Source {
    /** The commentator's key, pedal or remote. */
    HAND,
    /** The expected durations, started again at every step by hand. */
    CLOCK,
    /** The aircraft's own position. */
    AIRCRAFT
}
