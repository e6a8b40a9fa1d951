package crowdline.patter;

/**
 * What is being said at this moment.
 *
 * @param remarkId which remark
 * @param form in which words
 * @param startedS when it was begun
 */
public record Speaking(String remarkId, Form form, double startedS) {
    public Speaking {
        if (!Double.isFinite(startedS)) {
            throw new IllegalArgumentException("startedS of " + remarkId + " is " + startedS + "; it must be a number");
        }
    }
}
