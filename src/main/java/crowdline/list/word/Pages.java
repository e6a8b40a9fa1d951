package crowdline.list.word;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands at the head and the foot of printed pages, in the middle of a sentence that was copied out of them. */
final class Pages {
    private static final Pattern EDGE = Pattern.compile(
            "(?m)^[^\\n]{0,90}(?:\\s{2,}|\\s[-–—|·]\\s|^)page \\d{1,3}(?: ?(?:of|/) ?\\d{1,3})?[ \\t.]*$"
                    + "|^[ \\t]*[-–—] ?\\d{1,3} ?[-–—][ \\t]*$");

    private Pages() {}

    /** The text, as long as it was, with spaces in their place where a sentence goes on behind them. */
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
        return text.toString();
    }
}
