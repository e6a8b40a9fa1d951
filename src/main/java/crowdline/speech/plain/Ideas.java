package crowdline.speech.plain;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Guesses how many ideas a sentence has: one, and one more for each joint where a new statement begins ("but", "because",
 * "which", "and then", "and she", a semicolon). "One idea in each sentence" is the rule of plainlanguage.gov and of VOA
 * Special English; that three joints are too many is tuned on two shows' remarks, where two read aloud well.
 */
final class Ideas {

    /** More ideas than these in one sentence are too many for the ear. Tuned. */
    static final int MOST = 3;

    private static final String SUBJECT = "(?:I|we|you|he|she|it|they|this|that|there|then|so|his|her|the pilot)";

    private static final Pattern JOINT = Pattern.compile(
            ";| [–—] | - |[, ] ?(?:but|because|although|though|while|whereas|unless|which|who|whose|where|since|after|before|until"
                    + "|when|as soon as|so that)\\b|,? and (?=" + SUBJECT + "\\b)|, so (?=" + SUBJECT + "\\b)",
            Pattern.CASE_INSENSITIVE);

    private Ideas() {}

    /** How many ideas a sentence seems to have, 1 or more. */
    static int in(String sentence) {
        Matcher joint = JOINT.matcher(sentence);
        int ideas = 1;
        while (joint.find()) {
            ideas++;
        }
        return ideas;
    }
}
