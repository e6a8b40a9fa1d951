package crowdline.loaded;

/** Where a number that an act rests on comes from. */
public enum Origin {
    /** The pilot said so, in the list. */
    TOLD,
    /** It was timed in a pass. */
    TIMED,
    /** Somebody wrote it into the show file. */
    TYPED,
    /** Nobody said so: it is what is usual. */
    ASSUMED
}
