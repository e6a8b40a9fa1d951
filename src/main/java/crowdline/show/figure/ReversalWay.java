package crowdline.show.figure;

/** Which way round a roll goes from one bank to the other. */
public enum ReversalWay {
    /** On underneath, the long way, through upside down. */
    UNDER,
    /** Back over the top, the short way, through level. */
    OVER
}
