package crowdline.speech.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the sentences and words of a text by the rules of Unicode Standard Annex 29 (revision 45, sections 4 and 5) for
 * alphabets, with the full stops of abbreviations ("Mr.", "approx.") and of quotations ("Look up!" she says) not taken for
 * ends. What is written without spaces between words (Chinese, Thai) is not parted.
 */
public final class Sentences {

    /** What belongs to the character before it: accents, joiners. */
    private static final String MARKS = "[\\p{M}\\p{Cf}]*+";

    private static final String PARAGRAPH = "(?:\\r\\n|[\\r\\n\\u0085\\u2028\\u2029])";
    private static final String SPACES = "(?:[\\p{IsWhite_Space}&&[^\\r\\n\\u0085\\u2028\\u2029]]" + MARKS + ")*+";
    private static final String CLOSES = "(?:[\\p{Ps}\\p{Pe}\\p{Pi}\\p{Pf}\"']" + MARKS + ")*+";

    /** A stop that may also part a number or an abbreviation. */
    private static final String STOP = "[.\\u2024\\u2026]";

    private static final String MARK = "[!?\\u203C\\u203D\\u2047-\\u2049]";

    private static final String TITLES =
            "Mr|Mrs|Ms|Dr|Prof|Rev|St|Capt|Sgt|Cpl|Lt|Flt|Sqn|Wg|Gp|Ldr|Cdr|Maj|Col|Brig|Gen|Adm|Mk";
    private static final String MONTHS = "Jan|Feb|Aug|Sept|Oct|Nov|Dec";
    private static final String SHORT_WORDS = "[Aa]pprox|e\\.g|E\\.g|i\\.e|I\\.e|vs|max|min|incl|ft";

    /** "J. Quillan", "U.S. team", but not "6 G." */
    private static final String INITIAL = "(?<!\\p{N} )[\\p{Lu}&&[^I]]";

    /** Before a full stop: it belongs to the word. */
    private static final String ABBREVIATED =
            "(?<=(?<![\\p{L}\\p{N}])(?:" + TITLES + "|" + MONTHS + "|" + SHORT_WORDS + "|" + INITIAL + "))";

    /** "No. 3", where "No." alone is an answer. */
    private static final String NUMBERED = "(?<=(?<![\\p{L}\\p{N}])[Nn]os?)(?=\\. ?\\p{N})";

    /** Rules SB4 and SB6 to SB11 of the annex. */
    private static final Pattern SENTENCE_END = Pattern.compile("(?:"
            + "(?!" + ABBREVIATED + "|" + NUMBERED + ")" + STOP + MARKS
            + "(?!\\p{Nd}|(?<=[\\p{Lu}\\p{Ll}][\\p{M}\\p{Cf}]{0,3}\\.[\\p{M}\\p{Cf}]{0,3})\\p{Lu})"
            + CLOSES + SPACES + "(?![^\\p{L}\\r\\n\\u0085\\u2028\\u2029.!?]*+\\p{Ll})"
            + "|" + MARK + MARKS + CLOSES + SPACES + ")"
            + "(?![,:;\\p{Pd}" + ".!?\\u2024\\u2026\\u203C\\u203D\\u2047-\\u2049])" + PARAGRAPH + "?"
            + "|" + PARAGRAPH);

    /** "Capt.", "W.": a name follows. */
    private static final Pattern BEFORE_NAME = Pattern.compile("(?:" + TITLES + "|[\\p{Lu}&&[^I]])\\.");

    private static final String LETTER = "\\p{IsAlphabetic}";
    private static final String IN_WORD = "[" + LETTER + "\\p{Nd}\\p{Pc}]";

    /**
     * Rules WB5 to WB13 of the annex. Beside them a hyphen joins: the trade writes "half-and-half" as one word, and it is
     * read as one.
     */
    private static final Pattern WORD = Pattern.compile("(?:(?:"
            + LETTER + MARKS + "(?:['\\u2018\\u2019.:\\u2024\\u00B7]" + MARKS + "(?=" + LETTER + "))?"
            + "|\\p{Nd}" + MARKS + "(?:['\\u2018\\u2019.\\u2024,;]" + MARKS + "(?=\\p{Nd}))?"
            + "|\\p{Pc}" + MARKS + ")(?:-(?=" + IN_WORD + "))?)++");

    /** The sentences of a text in order, without the space around them; none for a text without words. */
    public List<TextSpan> in(String text) {
        List<TextSpan> found = new ArrayList<>();
        int start = 0;
        Matcher end = SENTENCE_END.matcher(text);
        while (end.find()) {
            if (!startsInLowerCase(text, end.end())) {
                addTrimmed(found, text, start, end.end());
                start = end.end();
            }
        }
        addTrimmed(found, text, start, text.length());
        return List.copyOf(found);
    }

    /** The words of a text in order: what has a letter or a digit. */
    public List<TextSpan> wordsIn(String text) {
        return WORD.matcher(text)
                .results()
                .filter(word -> hasWord(text, word.start(), word.end()))
                .map(word -> new TextSpan(word.start(), word.end()))
                .toList();
    }

    /**
     * Whether a word is a title or an initial, whose full stop ends no sentence: "Capt.", "W.".
     *
     * @param before the word before it; after a number, "G." is a unit and may end one
     */
    static boolean isBeforeName(String word, String before) {
        boolean isUnit =
                word.length() == 2 && !before.isEmpty() && Character.isDigit(before.codePointBefore(before.length()));
        return BEFORE_NAME.matcher(word).matches() && !isUnit;
    }

    private static boolean startsInLowerCase(String text, int from) {
        int i = from;
        while (i < text.length() && Character.isWhitespace(text.charAt(i))) {
            i++;
        }
        return i < text.length() && Character.isLowerCase(text.charAt(i));
    }

    private static void addTrimmed(List<TextSpan> found, String text, int from, int to) {
        int start = from;
        int end = to;
        while (start < end && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        if (hasWord(text, start, end)) {
            found.add(new TextSpan(start, end));
        }
    }

    private static boolean hasWord(String text, int from, int to) {
        return text.substring(from, to).codePoints().anyMatch(Character::isLetterOrDigit);
    }
}
