package crowdline.list.word;

import java.util.regex.Pattern;

/** What a mail program writes around a letter, and what its writer says out of politeness. */
public final class MailHead {
    /** What stands ahead of the colon in a letter's head. */
    public static final String FIELDS = "(?:from|to|cc|bcc|subject|subj|date|sent|re|fwd?|attachments?|reply-to)";

    private static final Pattern HEAD = Pattern.compile("(?s)[\\s>]*(?:" + FIELDS
            + "\\s?:.*|on .{5,80} wrote\\s*:.*|-{2,}.*(?:message|mail|forwarded|original).*|sent from .*)");
    private static final Pattern COURTESY = Pattern.compile(
            "(?s)[>\\s]*(?:(?:hi|hello|hey|dear|good (?:morning|afternoon|evening))\\b[\\p{L} .'-]{0,25}[,!:]?"
                    + "|(?:cheers|thanks|many thanks|(?:kind |best )?regards|best wishes|all the best)\\b[\\p{L} ,.!'-]{0,30})");
    /** What is longer shows by its beginning what it is. */
    private static final int LONGEST = 200;

    private MailHead() {}

    /** Whether a stretch of a text that is {@link Words#folded} is part of a letter's head. */
    public static boolean isAt(String folded, int from, int to) {
        return HEAD.matcher(folded).region(from, Math.min(to, from + LONGEST)).matches();
    }

    /** Whether all that was written is part of a letter's head, a greeting, or a farewell. */
    public static boolean isCourtesy(String written) {
        String folded = Words.folded(written.strip());
        return isAt(folded, 0, folded.length()) || COURTESY.matcher(folded).matches();
    }
}
