package crowdline.list.line;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A list as somebody corrects what was read in it: what its pieces mean, and in which order they are flown. A piece goes by
 * its key: a line by its number, from 0, an aside by -1 for the first of them, -2 for the next.
 *
 * @param read as it was read
 * @param meant what somebody said of a piece, by its key
 * @param order the keys of all pieces in the order they are flown; empty as long as that is the list's own
 */
public record Corrected(FigureList read, Map<Integer, Meaning> meant, List<Integer> order) {
    private static final Meaning NOTHING = new Meaning.Nothing();

    public Corrected {
        meant = Map.copyOf(meant);
        order = List.copyOf(order);
    }

    /** A list that nobody has corrected yet. */
    public static Corrected of(FigureList read) {
        return new Corrected(read, Map.of(), List.of());
    }

    /** The keys of all pieces, in order. */
    public List<Integer> keys() {
        if (!order.isEmpty()) {
            return order;
        }
        List<Integer> keys = new ArrayList<>();
        for (int line = 0; line <= read.lines().size(); line++) {
            for (int k = 0; k < read.asides().size(); k++) {
                if (read.asides().get(k).before() == line) {
                    keys.add(-1 - k);
                }
            }
            if (line < read.lines().size()) {
                keys.add(line);
            }
        }
        return keys;
    }

    public static boolean isAside(int key) {
        return key < 0;
    }

    /** An aside as it was read. */
    public Aside aside(int key) {
        return read.asides().get(-1 - key);
    }

    /** A piece as it was written. */
    public String text(int key) {
        return isAside(key) ? aside(key).text() : read.lines().get(key).text();
    }

    /** Whether somebody said what a piece means. */
    public boolean isSaid(int key) {
        return meant.containsKey(key);
    }

    /** Whether somebody said that a piece is nothing that is flown. */
    public boolean isOut(int key) {
        return NOTHING.equals(meant.get(key));
    }

    /** The line a piece is flown as; null if it is left out. */
    public @Nullable ListLine line(int key) {
        Meaning said = meant.get(key);
        if (said == null) {
            return isAside(key) ? null : read.lines().get(key);
        }
        return isAside(key) ? said.of(aside(key)) : said.of(read.lines().get(key));
    }

    /** Says what a piece means. */
    public Corrected with(int key, Meaning meaning) {
        Map<Integer, Meaning> all = new HashMap<>(meant);
        all.put(key, meaning);
        return new Corrected(read, all, order);
    }

    /** Takes a piece as it was read again. */
    public Corrected asRead(int key) {
        Map<Integer, Meaning> all = new HashMap<>(meant);
        all.remove(key);
        return new Corrected(read, all, order);
    }

    /** Leaves a piece out. */
    public Corrected without(int key) {
        return isAside(key) ? asRead(key) : with(key, NOTHING);
    }

    /**
     * Moves a piece to where another is now, past it.
     *
     * @throws IllegalArgumentException if there is no such piece
     */
    public Corrected moved(int key, int past) {
        List<Integer> keys = new ArrayList<>(keys());
        int to = keys.indexOf(past);
        if (to < 0 || !keys.remove((Integer) key)) {
            throw new IllegalArgumentException("there is no piece " + (to < 0 ? past : key));
        }
        keys.add(to, key);
        return new Corrected(read, meant, keys);
    }

    /** The same corrections of a list that was read anew: what is written as it was keeps them, wherever it stands. */
    public Corrected carriedTo(FigureList anew) {
        Corrected fresh = of(anew);
        Map<String, Integer> there = pieces(fresh);
        Map<Integer, Integer> now = new HashMap<>();
        pieces(this).forEach((piece, key) -> {
            Integer found = there.get(piece);
            if (found != null) {
                now.put(key, found);
            }
        });
        Map<Integer, Meaning> carried = new HashMap<>();
        meant.forEach((key, meaning) -> {
            Integer found = now.get(key);
            if (found != null) {
                carried.put(found, meaning);
            }
        });
        return new Corrected(anew, carried, order.isEmpty() ? List.of() : ordered(fresh.keys(), now));
    }

    /** The pieces that were moved stand as they were moved; a new one behind what is written ahead of it. */
    private List<Integer> ordered(List<Integer> written, Map<Integer, Integer> now) {
        List<Integer> keys = new ArrayList<>(
                order.stream().map(now::get).filter(Objects::nonNull).toList());
        for (int i = 0; i < written.size(); i++) {
            Integer key = written.get(i);
            if (!keys.contains(key)) {
                keys.add(i == 0 ? 0 : keys.indexOf(written.get(i - 1)) + 1, key);
            }
        }
        return keys;
    }

    /** Each piece by its words and the how many-th of its kind with these words it is. */
    private static Map<String, Integer> pieces(Corrected list) {
        Map<String, Integer> pieces = new LinkedHashMap<>();
        number(pieces, "line ", list.read.lines().size(), i -> i, list);
        number(pieces, "aside ", list.read.asides().size(), i -> -1 - i, list);
        return pieces;
    }

    private static void number(
            Map<String, Integer> pieces, String what, int size, IntFunction<Integer> key, Corrected list) {
        Map<String, Integer> seen = new HashMap<>();
        IntStream.range(0, size).forEach(i -> {
            String words = list.text(key.apply(i));
            pieces.put(what + seen.merge(words, 1, Integer::sum) + " " + words, key.apply(i));
        });
    }

    /** The list as it was corrected: without what was left out, and with what was taken in. */
    public FigureList list() {
        List<ListLine> lines = new ArrayList<>();
        List<Aside> left = new ArrayList<>();
        for (int key : keys()) {
            ListLine line = line(key);
            if (line != null) {
                lines.add(line);
            } else if (isAside(key)) {
                left.add(new Aside(text(key), lines.size(), aside(key).choices()));
            }
        }
        return new FigureList(lines, left, read.findings());
    }
}
