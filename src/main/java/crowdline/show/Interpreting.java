package crowdline.show;

/** When a remark is said in its other language. */
public enum Interpreting {
    /** After it, in the same loudspeakers: it takes the time of both. */
    AFTER,
    /** At the same time, in loudspeakers or earphones of its own: it takes the time of the longer one. */
    BESIDE
}
