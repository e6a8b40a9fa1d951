package crowdline.console.incident;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** Cuts a paragraph that is too long for the screen into parts as even as its sentences allow. No letter is left out. */
final class Parts {
    /** What it costs to end a part at a comma, or within a clause, instead of at a full stop, in lengths of a part; tuned. */
    private static final double CLAUSE = 0.25;

    private static final double WORD = 0.8;
    /** Quotation marks and brackets after the full stop. */
    private static final Pattern CLOSING = Pattern.compile("[\"'”’)]+$");

    private Parts() {}

    /**
     * The parts in order; together they are the paragraph, but for the hyphens in words that are too long for a line.
     *
     * @param fits whether words can be shown at once
     */
    static List<String> of(String paragraph, Predicate<String> fits) {
        List<String> words = LongWords.of(paragraph, fits);
        int room = longestThatFits(words, fits);
        if (room >= words.size()) {
            return List.of(String.join(" ", words));
        }
        int[] ends = ends(words);
        double[] costs = words.stream().mapToDouble(Parts::cost).toArray();
        for (int parts = (words.size() + room - 1) / room; parts < words.size(); parts++) {
            List<String> cut = cut(words, ends, costs, parts);
            if (cut.stream().allMatch(fits)) {
                return cut;
            }
        }
        return words;
    }

    /** How many of the first words fit, at least 1; found without ever laying out much more than that. */
    private static int longestThatFits(List<String> words, Predicate<String> fits) {
        int fit = 1;
        int not = 2;
        while (not <= words.size() && fits.test(join(words, 0, not))) {
            fit = not;
            not = 2 * not;
        }
        if (not > words.size()) {
            if (fits.test(join(words, 0, words.size()))) {
                return words.size();
            }
            not = words.size();
        }
        while (not - fit > 1) {
            int middle = (fit + not) / 2;
            if (fits.test(join(words, 0, middle))) {
                fit = middle;
            } else {
                not = middle;
            }
        }
        return fit;
    }

    /** Cuts near even lengths: at most half a part from there, at the end of a sentence or clause if there is one. */
    private static List<String> cut(List<String> words, int[] ends, double[] costs, int parts) {
        double length = (double) ends[ends.length - 1] / parts;
        List<String> cut = new ArrayList<>();
        int from = 0;
        int look = 0;
        for (int part = 1; part < parts; part++) {
            int last = words.size() - 1 - (parts - part);
            look = Math.max(look, from);
            while (look < last && ends[look] < (part - 0.5) * length) {
                look++;
            }
            int first = Math.min(look, last);
            int best = first;
            double least = Double.POSITIVE_INFINITY;
            for (int i = first; i <= last && (i == first || ends[i] <= (part + 0.5) * length); i++) {
                double cost = Math.abs(ends[i] - part * length) / length + costs[i];
                if (cost < least) {
                    least = cost;
                    best = i;
                }
            }
            cut.add(join(words, from, best + 1));
            from = best + 1;
        }
        cut.add(join(words, from, words.size()));
        return cut;
    }

    /** How many letters there are up to the end of each word. */
    private static int[] ends(List<String> words) {
        int[] ends = new int[words.size()];
        int letters = 0;
        for (int i = 0; i < ends.length; i++) {
            letters += words.get(i).length() + 1;
            ends[i] = letters;
        }
        return ends;
    }

    /** Whether a part ends with a sentence. */
    static boolean isWhole(String part) {
        String end = CLOSING.matcher(part).replaceAll("");
        return end.endsWith(".") || end.endsWith("!") || end.endsWith("?");
    }

    private static double cost(String last) {
        if (isWhole(last)) {
            return 0;
        }
        String end = CLOSING.matcher(last).replaceAll("");
        return end.endsWith(",") || end.endsWith(";") || end.endsWith(":") ? CLAUSE : WORD;
    }

    private static String join(List<String> words, int from, int to) {
        return String.join(" ", words.subList(from, to));
    }
}
