package crowdline.list.word;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a text copied out of printed pages has in the middle of its sentences: their heads and feet, and letters that refer to a drawing. */
final class Pages {
    private static final Pattern EDGE = Pattern.compile(
            "(?m)^[^\\n]{0,90}(?:\\s{2,}|\\s[-–—|·]\\s|^)page \\d{1,3}(?: ?(?:of|/) ?\\d{1,3})?[ \\t.]*(?:\\n[-=_–—]{10,}[ \\t]*)?$"
                    + "|^[ \\t]*[-–—] ?\\d{1,3} ?[-–—][ \\t]*$");

    /** "A pass (b)": where a drawing or a table tells more. */
    private static final Pattern REFERENCE = Pattern.compile("(?<=[\\p{L}\\d\"'] )\\([a-z]\\)");

    /** Fewer may mean something. */
    private static final int LEAST_REFERENCES = 5;

    private Pages() {}

    /** The text, as long as it was, with spaces in place of what stands between two parts of a sentence. */
    static String without(String folded) {
        StringBuilder text = new StringBuilder(folded);
        Matcher edge = EDGE.matcher(folded);
        while (edge.find()) {
            int before = edge.start();
            while (before > 0 && Character.isWhitespace(folded.charAt(before - 1))) {
                before--;
            }
            int after = edge.end();
            while (after < folded.length() && Character.isWhitespace(folded.charAt(after))) {
                after++;
            }
            boolean goesOn = before > 0
                    && after < folded.length()
                    && ".!?:;".indexOf(folded.charAt(before - 1)) < 0
                    && Character.isLowerCase(folded.charAt(after));
            for (int i = before; goesOn && i < after; i++) {
                text.setCharAt(i, ' ');
            }
        }
        Matcher reference = REFERENCE.matcher(text);
        return reference.results().count() < LEAST_REFERENCES ? text.toString() : reference.replaceAll("   ");
    }
}
