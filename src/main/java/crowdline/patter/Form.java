package crowdline.patter;

/** In which words a remark is said. */
public enum Form {
    /** As written. */
    FULL,
    /** In the shorter words written for when time is short. */
    SHORT
}
