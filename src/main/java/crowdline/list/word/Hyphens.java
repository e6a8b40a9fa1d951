package crowdline.list.word;

import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words that a printed page parts at the end of a line: "two bar-" and below it "rel rolls". */
final class Hyphens {
    /** It parts no word, whether a page was copied with it or it stands here for the end of a line. */
    static final String SOFT = "\u00ad";

    private static final Pattern PARTED = Pattern.compile("(?<=\\p{L})-[ \\t]*\\r?\\n[> \\t]*(?=\\p{L})");
    /** Shorter parts are seldom words of their own: "Cu-ban". */
    private static final int SHORTEST_WORD = 3;

    private static final int LONGEST_WORD = 20;

    private Hyphens() {}

    /**
     * The folded text, as long as it was, with such lines joined: two words keep their hyphen, anything else becomes one
     * word. A capital begins a line of its own.
     *
     * @param isWord whether somebody writes these letters as a word
     */
    static String joined(String written, String folded, Predicate<String> isWord) {
        StringBuilder text = new StringBuilder(folded);
        Matcher parted = PARTED.matcher(folded);
        while (parted.find()) {
            boolean beginsAnew = Character.isUpperCase(written.charAt(parted.end()))
                    && !Character.isUpperCase(written.charAt(parted.start() - 1));
            String ahead = letters(folded, parted.start() - 1, -1);
            String behind = letters(folded, parted.end(), 1);
            boolean areTwo = Math.min(ahead.length(), behind.length()) >= SHORTEST_WORD
                    && isWord.test(ahead)
                    && isWord.test(behind);
            for (int i = parted.start(); i < parted.end() && !beginsAnew; i++) {
                text.setCharAt(i, !areTwo ? SOFT.charAt(0) : i == parted.start() ? '-' : ' ');
            }
        }
        return text.toString();
    }

    /** The letters from a place on, in one direction. */
    private static String letters(String folded, int from, int step) {
        int to = from;
        while (to >= 0
                && to < folded.length()
                && Math.abs(to - from) < LONGEST_WORD
                && Character.isLetter(folded.charAt(to))) {
            to += step;
        }
        return step > 0 ? folded.substring(from, to) : folded.substring(to + 1, from + 1);
    }
}
