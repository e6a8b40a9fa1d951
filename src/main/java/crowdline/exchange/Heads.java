package crowdline.exchange;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Which column is what.
 *
 * @param columns the number of each column, from 0
 * @param rows how many rows come before the first one with values
 * @param said the row of the heads; empty if there is none
 */
record Heads<C extends Enum<C>>(Map<C, Integer> columns, int rows, Cells.Row said) {
    /** Titles, dates and logos stand above a table, seldom more than this. */
    private static final int SEARCHED = 25;
    /** So many times as many values show that a column is meant rather than another. */
    private static final double FAR_MORE = 1.4;

    Heads {
        columns = Map.copyOf(columns);
    }

    /** Columns that are told by what is in them. */
    static <C extends Enum<C>> Heads<C> without(Map<C, Integer> columns) {
        return new Heads<>(columns, 0, new Cells.Row(0, List.of()));
    }

    /** The column's number, or -1. */
    int of(C column) {
        return columns.getOrDefault(column, -1);
    }

    boolean has(C column) {
        return columns.containsKey(column);
    }

    /** Whether the values below a head can be what it says. */
    @FunctionalInterface
    interface Fit<C> {
        boolean fits(C column, List<String> values);
    }

    /** The row in which most cells, and two at least, are heads of columns, whatever is in those. */
    static <C extends Enum<C>> Optional<Heads<C>> in(List<Cells.Row> rows, Map<C, List<String>> words) {
        return in(rows, words, (column, values) -> true);
    }

    /** The row in which most cells, and two at least, are heads of columns that have what they say; the first such row. */
    static <C extends Enum<C>> Optional<Heads<C>> in(List<Cells.Row> rows, Map<C, List<String>> words, Fit<C> fit) {
        Map<C, Integer> none = Map.of();
        Heads<C> best = without(none);
        for (int i = 0; i < Math.min(SEARCHED, rows.size()); i++) {
            Map<C, Integer> found = named(rows.get(i), rows.subList(i + 1, rows.size()), words, fit);
            if (found.size() >= 2 && found.size() > best.columns().size()) {
                best = new Heads<>(found, i + 1, rows.get(i));
            }
        }
        return best.columns().isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /** A head that is all a word of ours comes before one that has it among others, unless that has far more below it. */
    private static <C extends Enum<C>> Map<C, Integer> named(
            Cells.Row row, List<Cells.Row> below, Map<C, List<String>> words, Fit<C> fit) {
        Map<C, Integer> found = new LinkedHashMap<>();
        for (boolean whole : new boolean[] {true, false}) {
            for (Map.Entry<C, List<String>> e : new TreeMap<>(words).entrySet()) {
                for (int i = 0; i < row.width(); i++) {
                    String head = plain(row.text(i));
                    if (!head.isEmpty()
                            && !found.containsValue(i)
                            && e.getValue().stream().anyMatch(word -> is(head, word, whole))
                            && fit.fits(e.getKey(), values(below, i))
                            && isBetter(below, i, found.get(e.getKey()), whole)) {
                        found.put(e.getKey(), i);
                    }
                }
            }
        }
        return found;
    }

    private static boolean isBetter(List<Cells.Row> below, int column, @Nullable Integer before, boolean whole) {
        return before == null
                || values(below, column).size()
                        > (whole ? 1 : FAR_MORE) * values(below, before).size();
    }

    private static List<String> values(List<Cells.Row> rows, int column) {
        return rows.stream()
                .map(row -> row.text(column))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    private static boolean is(String head, String word, boolean whole) {
        return whole ? head.equals(word) : Arrays.asList(head.split(" ", -1)).contains(word);
    }

    /** Small letters, without what stands in brackets, and without signs. */
    private static String plain(String head) {
        if (head.length() > 40) {
            return "";
        }
        return Text.withoutAccents(head)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\([^)]*\\)|\\[[^]]*\\]", " ")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }
}
