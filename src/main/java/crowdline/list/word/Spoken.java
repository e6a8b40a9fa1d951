package crowdline.list.word;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sounds and words of somebody who thinks aloud: "so, um, I take off, yeah, and, er, I climb for, I dunno, a minute". */
final class Spoken {
    private static final Pattern SOUND = Pattern.compile("\\b(?:u+m+|u+h+|e+r+m*|h+m+)\\b");
    /** Fewer may be slips of the pen. */
    private static final int LEAST = 2;

    private static final Pattern FILLER = Pattern.compile(
            "(?<before>,?)\\s*\\b(?:u+m+|u+h+|e+r+m*|h+m+|y'know|you know|i dunno|i don't know|sort of|kind of|kinda|i guess|i mean|yeah|what's next|oh yes|ah yes|let me see|let's see)\\b(?<behind>,?)"
                    + "|(?<=^|[.!?\"] ?|\\n)(?:right|ok|okay|well|so|now|anyway),(?=\\s)");
    /** Behind these the sentence goes on, though commas stand around what is said in between. */
    private static final Pattern GOES_ON = Pattern.compile(
            ".*\\b(?:for|a|an|the|and|then|to|of|at|about|is|it's|so|i|with|do|my|like|around|on)", Pattern.DOTALL);

    private Spoken() {}

    /** The text, as long as it was, with spaces in place of them; nothing changes if nobody says "um". */
    static String without(String folded) {
        if (SOUND.matcher(folded).results().count() < LEAST) {
            return folded;
        }
        StringBuilder text = new StringBuilder(folded);
        Matcher found = FILLER.matcher(folded);
        while (found.find()) {
            boolean goesOn = GOES_ON.matcher(folded.substring(Math.max(0, found.start() - 12), found.start()))
                    .matches();
            boolean hasComma =
                    found.group("before") != null && !found.group("before").isEmpty();
            for (int i = found.start(); i < found.end(); i++) {
                text.setCharAt(i, text.charAt(i) == '\n' ? '\n' : ' ');
            }
            if (hasComma && !goesOn) {
                text.setCharAt(found.start(), ',');
            }
        }
        return text.toString();
    }
}
