package crowdline.show.figure;

/** In which words a remark is said. */
public enum RemarkForm {
    /** As written. */
    FULL,
    /** In the shorter words written for when time is short. */
    SHORT
}
