package crowdline.speech.plain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Breaks a remark into short lines for reading aloud: at ends of sentences, then at commas and other pauses, then before
 * conjunctions and prepositions, never between a number and its unit or an article and its word if it can be helped.
 *
 * <p>Of all ways to break, the one with the least total cost is taken; the costs are tuned on commentary.
 */
public final class Breaths {

    /** The narrowest column that still shows words. */
    public static final int LEAST_CHARS = 8;

    private static final double LINE = 1.0;
    private static final double SHORT_LINE = 0.6;
    private static final double RUN_ON = 1.5;
    private static final double AT_PAUSE = 0.2;
    private static final double BEFORE_JOINT = 0.8;
    private static final double ANYWHERE = 2.0;
    private static final double TORN = 4.0;
    private static final double BEFORE_ITS_NAME = 8.0;

    private static final Set<String> JOINTS = Set.of(
            "and", "but", "or", "so", "because", "while", "when", "where", "which", "who", "that", "then", "as", "if",
            "until", "before", "after", "with", "without", "into", "over", "under", "through", "from", "for", "at",
            "in", "on", "to", "of", "by", "across", "along", "against", "between", "behind", "than", "like", "towards",
            "past");

    private static final Set<String> HELD = Set.of(
            "a", "an", "the", "his", "her", "their", "our", "your", "my", "its", "this", "these", "those", "mr", "mrs",
            "ms", "dr", "mr.", "mrs.", "dr.", "no", "no.", "mk", "is", "are", "very", "of", "to", "in", "on", "at",
            "by", "for", "from", "with", "and", "or", "but", "into", "over");

    private static final Pattern SPACES = Pattern.compile("\\s+", Pattern.UNICODE_CHARACTER_CLASS);

    private Breaths() {}

    /**
     * The lines of a text. Joined with spaces they give the text again, except that a word longer than a line is cut.
     *
     * @param text any text; line breaks in it count as spaces
     * @param maxChars the longest line, in characters, {@value #LEAST_CHARS} or more
     */
    public static List<String> lines(String text, int maxChars) {
        if (maxChars < LEAST_CHARS) {
            throw new IllegalArgumentException(
                    "lines of " + maxChars + " characters are too short; allowed is " + LEAST_CHARS + " or more");
        }
        List<String> words = words(text, maxChars);
        int n = words.size();
        double[] best = new double[n + 1];
        int[] from = new int[n + 1];
        for (int end = 1; end <= n; end++) {
            best[end] = Double.POSITIVE_INFINITY;
            int length = -1;
            double runOn = 0;
            for (int start = end - 1; start >= 0; start--) {
                length += 1 + length(words.get(start));
                if (length > maxChars) {
                    break;
                }
                runOn += start < end - 1 && endsSentence(words, start) ? RUN_ON : 0;
                double slack = (double) (maxChars - length) / maxChars;
                double cost = best[start] + LINE + SHORT_LINE * slack * slack + runOn + breakCost(words, end);
                if (cost < best[end]) {
                    best[end] = cost;
                    from[end] = start;
                }
            }
        }
        return assemble(words, from);
    }

    private static List<String> assemble(List<String> words, int[] from) {
        List<String> lines = new ArrayList<>();
        for (int end = words.size(); end > 0; end = from[end]) {
            lines.add(String.join(" ", words.subList(from[end], end)));
        }
        Collections.reverse(lines);
        return List.copyOf(lines);
    }

    private static double breakCost(List<String> words, int end) {
        if (end == words.size() || endsSentence(words, end - 1)) {
            return 0;
        }
        String before = words.get(end - 1);
        char last = before.charAt(before.length() - 1);
        String after = words.get(end).toLowerCase(Locale.UK);
        if (",;:–—…)".indexOf(last) >= 0 || before.endsWith("...")) {
            return AT_PAUSE;
        }
        if (after.equals("–") || after.equals("—") || after.equals("-")) {
            return TORN;
        }
        boolean title =
                isBeforeName(words, end - 1) || (before.endsWith(".") && HELD.contains(before.toLowerCase(Locale.UK)));
        boolean number = Character.isDigit(before.charAt(0)) || Character.isDigit(last);
        if (number || title) {
            return BEFORE_ITS_NAME;
        }
        if (HELD.contains(before.toLowerCase(Locale.UK))) {
            return TORN;
        }
        return JOINTS.contains(after) || after.startsWith("(") ? BEFORE_JOINT : ANYWHERE;
    }

    /** A full stop, unless it belongs to a short word before a name or number, or the text goes on in lower case. */
    private static boolean endsSentence(List<String> words, int at) {
        String word = words.get(at);
        int last = word.length() - 1;
        while (last > 0 && "\"'”’)".indexOf(word.charAt(last)) >= 0) {
            last--;
        }
        if (".!?…".indexOf(word.charAt(last)) < 0
                || HELD.contains(word.toLowerCase(Locale.UK))
                || isBeforeName(words, at)) {
            return false;
        }
        return at + 1 == words.size()
                || !Character.isLowerCase(words.get(at + 1).codePointAt(0));
    }

    private static boolean isBeforeName(List<String> words, int at) {
        return Sentences.isBeforeName(words.get(at), at == 0 ? "" : words.get(at - 1));
    }

    private static List<String> words(String text, int maxChars) {
        List<String> words = new ArrayList<>();
        for (String word : SPACES.splitAsStream(text.strip()).toList()) {
            String rest = word;
            while (length(rest) > maxChars) {
                int cut = rest.offsetByCodePoints(0, maxChars);
                words.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            if (!rest.isEmpty()) {
                words.add(rest);
            }
        }
        return words;
    }

    private static int length(String word) {
        return word.codePointCount(0, word.length());
    }
}
