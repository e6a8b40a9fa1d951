package crowdline.console.incident;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Breaks words that are too long for a line, with a hyphen, so that nothing has to be cut off or set small for them. */
final class LongWords {
    private LongWords() {}

    /**
     * The words of a text in order, those that are too long in pieces.
     *
     * @param fits whether a word can be shown in one line
     */
    static List<String> of(String text, Predicate<String> fits) {
        List<String> words = new ArrayList<>();
        for (String word : text.strip().split("\\s+", -1)) {
            String rest = word;
            while (rest.codePointCount(0, rest.length()) > 2 && !fits.test(rest)) {
                int end = longestThatFits(rest, fits);
                words.add(rest.substring(0, end) + "-");
                rest = rest.substring(end);
            }
            words.add(rest);
        }
        return words;
    }

    /** Where the longest beginning that fits with its hyphen ends: at least after the first letter, never within one. */
    private static int longestThatFits(String word, Predicate<String> fits) {
        int fit = 1;
        int not = word.codePointCount(0, word.length());
        while (not - fit > 1) {
            int middle = (fit + not) / 2;
            if (fits.test(word.substring(0, word.offsetByCodePoints(0, middle)) + "-")) {
                fit = middle;
            } else {
                not = middle;
            }
        }
        return word.offsetByCodePoints(0, fit);
    }
}
