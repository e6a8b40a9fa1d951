package crowdline.speech.say;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One way of saying what is written.
 *
 * @param pattern what it looks like; matched where a word, number or sign starts
 * @param saying its words, or null where it only looked like it
 */
record SayingRule(Pattern pattern, Saying saying) {

    /** Turns a match into words. */
    interface Saying {
        @Nullable
        String say(Matcher match);
    }

    static SayingRule of(String regex, Saying saying) {
        // Clean text has no other digits, and asking Unicode for each is slow.
        return new SayingRule(Pattern.compile(regex.replace("\\d", "[0-9]"), Pattern.UNICODE_CHARACTER_CLASS), saying);
    }
}
