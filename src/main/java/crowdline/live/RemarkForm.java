package crowdline.live;

/** Which form of a remark was spoken. */
public enum RemarkForm {
    FULL,
    SHORT
}
