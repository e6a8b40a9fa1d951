package crowdline.live.event;

/** Which form of a remark was spoken. */
public enum RemarkForm {
    FULL,
    SHORT
}
