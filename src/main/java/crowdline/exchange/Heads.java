package crowdline.exchange;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Which column is what.
 *
 * @param columns the number of each column, from 0
 * @param rows how many rows come before the first one with values
 */
record Heads<C extends Enum<C>>(Map<C, Integer> columns, int rows) {
    /** Titles, dates and logos stand above a table, seldom more than this. */
    private static final int SEARCHED = 25;

    Heads {
        columns = Map.copyOf(columns);
    }

    /** The column's number, or -1. */
    int of(C column) {
        return columns.getOrDefault(column, -1);
    }

    boolean has(C column) {
        return columns.containsKey(column);
    }

    /** The first row in which at least two cells are heads of columns. */
    static <C extends Enum<C>> Optional<Heads<C>> in(List<Cells.Row> rows, Map<C, List<String>> words) {
        for (int i = 0; i < Math.min(SEARCHED, rows.size()); i++) {
            Map<C, Integer> found = named(rows.get(i), words);
            if (found.size() >= 2) {
                return Optional.of(new Heads<>(found, i + 1));
            }
        }
        return Optional.empty();
    }

    /** Whole heads first, then those that only begin with a word of ours: "Start" before "Start of taxi". */
    private static <C extends Enum<C>> Map<C, Integer> named(Cells.Row row, Map<C, List<String>> words) {
        Map<C, Integer> found = new LinkedHashMap<>();
        for (boolean whole : new boolean[] {true, false}) {
            for (int i = 0; i < row.width(); i++) {
                String head = plain(row.text(i));
                int at = i;
                if (!head.isEmpty() && !found.containsValue(i)) {
                    words.entrySet().stream()
                            .filter(e -> !found.containsKey(e.getKey()))
                            .filter(e -> e.getValue().stream().anyMatch(word -> is(head, word, whole)))
                            .findFirst()
                            .ifPresent(e -> found.put(e.getKey(), at));
                }
            }
        }
        return found;
    }

    private static boolean is(String head, String word, boolean whole) {
        return whole ? head.equals(word) : Arrays.asList(head.split(" ", -1)).contains(word);
    }

    /** Small letters, without what stands in brackets, and without signs. */
    private static String plain(String head) {
        if (head.length() > 40) {
            return "";
        }
        return head.toLowerCase(Locale.ROOT)
                .replaceAll("\\([^)]*\\)|\\[[^]]*\\]", " ")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }
}
