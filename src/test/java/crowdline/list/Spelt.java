package crowdline.list;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A row of a table of spellings: how something is written, and how it is to be read, in the same words as {@link #said}.
 *
 * @param text what is written
 * @param expected what comes of it, its parts in the order of {@link #said}
 */
public record Spelt(String text, String expected) {
    private static final List<String> ORDER = List.of(
            "count", "place", "side", "flies", "height", "entry", "seconds", "smoke", "note", "unsure", "choices");

    public static Stream<Spelt> rows(String file) {
        return written(file).stream().filter(row -> !row.startsWith("#")).map(Spelt::row);
    }

    /** The rows of a table and the remarks between them, which begin with #. */
    static List<String> written(String file) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Spelt.class.getResourceAsStream(file), file), StandardCharsets.UTF_8))) {
            return in.lines().filter(row -> !row.isBlank()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    static Spelt row(String row) {
        int bar = row.indexOf(" | ");
        String text = row.substring(0, bar)
                .replace("\\n", "\n")
                .replace("\\t", "\t")
                .replace("\\r", "\r")
                .replace("\\p", "|");
        return new Spelt(text, ordered(row.substring(bar + 3).strip()));
    }

    private static String ordered(String expected) {
        return Stream.of(expected.split(" ; "))
                .map(figure -> {
                    List<String> parts = new ArrayList<>(List.of(figure.split(", (?=count|place|side|flies|height|entry"
                            + "|seconds|smoke|note \"|unsure|choices|list note)")));
                    String name = parts.remove(0);
                    List<String> notes = parts.stream()
                            .filter(p -> p.startsWith("list note"))
                            .toList();
                    parts.removeAll(notes);
                    parts.sort((a, b) -> Integer.compare(rank(a), rank(b)));
                    return Stream.of(List.of(name), parts, notes)
                            .flatMap(List::stream)
                            .collect(Collectors.joining(", "));
                })
                .collect(Collectors.joining(" ; "));
    }

    private static int rank(String part) {
        return ORDER.indexOf(part.replaceFirst(" .*", ""));
    }

    /** A list in the words of the table. */
    public static String said(FigureList list) {
        String lines = list.lines().stream().map(Spelt::said).collect(Collectors.joining(" ; "));
        String notes =
                list.notes().stream().map(n -> ", list note \"" + n + "\"").collect(Collectors.joining());
        return lines + notes;
    }

    /** A line in the words of the table. */
    public static String said(ListLine line) {
        List<String> parts = new ArrayList<>();
        parts.add(line.figure() == null ? '"' + line.title() + '"' : line.figure());
        add(parts, "count", number(line.count()));
        add(parts, "place", word(line.place()));
        add(parts, "side", word(line.side()));
        add(parts, "flies", word(line.heading()));
        add(parts, "height", number(line.heightFt()));
        add(parts, "entry", number(line.entryKt()));
        add(parts, "seconds", number(line.seconds()));
        Boolean smoke = line.smoke();
        add(parts, "smoke", smoke == null ? null : smoke ? "on" : "off");
        add(parts, "note", line.note() == null ? null : '"' + line.note() + '"');
        if (!line.sure()) {
            parts.add("unsure");
        }
        if (line.choices().size() > 1 && line.figure() != null && line.note() != null) {
            parts.add("choices " + String.join(" / ", line.choices()));
        }
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, String what, @Nullable String value) {
        if (value != null) {
            parts.add(what + " " + value);
        }
    }

    private static @Nullable String number(@Nullable Double value) {
        return value == null
                ? null
                : value == Math.rint(value) ? String.valueOf(value.longValue()) : String.valueOf(value);
    }

    private static @Nullable String word(@Nullable Enum<?> value) {
        return value == null ? null : value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
