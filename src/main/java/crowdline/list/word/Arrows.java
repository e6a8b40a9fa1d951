package crowdline.list.word;

import java.util.regex.Pattern;

/** Arrows that say which way a figure is flown: alone in the cell of a table, or at the end of a line. */
final class Arrows {
    /** In place of an arrow that is no way to what is flown next. */
    static final char RIGHT = '↦';

    static final char LEFT = '↤';

    private static final String ENDS = "(?=[ ]*(?:[\\t\\n|;]|$))";
    private static final Pattern TO_THE_RIGHT = Pattern.compile("(?<=[\\t |;])[→⇒➔➜]" + ENDS);
    private static final Pattern TO_THE_LEFT = Pattern.compile("(?<=[\\t |;])[←⇐]" + ENDS);

    private Arrows() {}

    /** The text, as long as it was, with such arrows as signs of their own. */
    static String mended(String folded) {
        boolean hasAny = folded.chars().anyMatch(c -> "→⇒➔➜←⇐".indexOf(c) >= 0);
        return hasAny
                ? TO_THE_LEFT
                        .matcher(TO_THE_RIGHT.matcher(folded).replaceAll(String.valueOf(RIGHT)))
                        .replaceAll(String.valueOf(LEFT))
                : folded;
    }
}
