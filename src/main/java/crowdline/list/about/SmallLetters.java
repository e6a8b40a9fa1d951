package crowdline.list.about;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Names in a text that is all in small letters: only behind words that nothing but a name follows. */
final class SmallLetters {
    private static final String NAME = "(\\p{Ll}[\\p{Ll}'’-]{1,20})(?:[ \\t](\\p{Ll}[\\p{Ll}'’-]{1,20}))?";
    private static final Pattern NAMED = Pattern.compile(
            "(?:\\bmy name(?: is|['’]?s)|\\b(?:pilot|flown by)(?: is|[ \\t]*[:=])|(?:^|\\n)[ \\t]*(?:hi|hello|hey|hiya|morning|afternoon|evening)\\b(?: (?:all|there|everyone))?[ \\t,]*"
                    + "(?:(?:it|this)(?: is|['’]?s)(?: me)?|i['’]?m|i am))[ \\t]+" + NAME);
    /** At the end of the text. */
    private static final Pattern SIGNED = Pattern.compile(
            "\\b(?:cheers|(?:kind |best |many )?regards|rgds|thanks|thx|thank you|ta)[ \\t]*[,.!\\n–-]{0,3}[ \\t]*"
                    + NAME + "[ \\t]*[.!x]{0,3}\\s*$");

    /** Words that may stand there, and are no names. */
    private static final Set<String> OTHER = Set.of(
            "and",
            "the",
            "a",
            "an",
            "all",
            "for",
            "from",
            "again",
            "my",
            "me",
            "i",
            "im",
            "is",
            "in",
            "on",
            "at",
            "it",
            "with",
            "flying",
            "here",
            "this",
            "that",
            "so",
            "to",
            "we",
            "you",
            "about",
            "speaking",
            "calling",
            "of",
            "very",
            "much",
            "everyone",
            "everybody",
            "lots",
            "mate",
            "mates",
            "lads",
            "guys",
            "folks",
            "chaps",
            "team",
            "friends",
            "now",
            "today",
            "will",
            "advance",
            "just",
            "not",
            "your",
            "our",
            "by",
            "who",
            "then",
            "please",
            "ok",
            "first",
            "sunday",
            "saturday");

    private SmallLetters() {}

    /** The text with its names in capitals, if it has no other. */
    static List<String> named(List<String> said) {
        boolean isSmall = said.stream().flatMapToInt(String::chars).noneMatch(Character::isUpperCase);
        return isSmall
                ? said.stream().map(part -> named(NAMED, named(SIGNED, part))).toList()
                : said;
    }

    private static String named(Pattern pattern, String part) {
        Matcher found = pattern.matcher(part);
        StringBuilder named = new StringBuilder(part);
        while (found.find()) {
            boolean isName = isName(found.group(1));
            if (isName && pattern.equals(SIGNED) && found.start() > 0) {
                // A signature stands in a line of its own.
                named.setCharAt(found.start() - 1, '\n');
            }
            capital(named, found, 1, isName);
            capital(named, found, 2, isName && isName(found.group(2)));
        }
        return named.toString();
    }

    private static void capital(StringBuilder text, Matcher found, int group, boolean isName) {
        if (isName) {
            int at = found.start(group);
            text.setCharAt(at, Character.toUpperCase(text.charAt(at)));
        }
    }

    private static boolean isName(@Nullable String word) {
        return word != null && !OTHER.contains(word.toLowerCase(Locale.UK));
    }
}
