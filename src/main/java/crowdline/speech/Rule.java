package crowdline.speech;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One way of saying what is written.
 *
 * @param pattern what it looks like; matched where a word, number or sign starts
 * @param saying its words, or null where it only looked like it
 */
record Rule(Pattern pattern, Saying saying) {

    /** Turns a match into words. */
    interface Saying {
        @Nullable
        String say(Matcher match);
    }

    static Rule of(String regex, Saying saying) {
        return new Rule(Pattern.compile(regex, Pattern.UNICODE_CHARACTER_CLASS), saying);
    }
}
