package crowdline.list.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What stands at the head of a table, and what its columns hold by that. */
final class Heads {
    /** Fewer do not make a line the head of a table, and a head has no more words. */
    private static final int LEAST_HEADS = 3;

    private static final Pattern TABS = Pattern.compile("\\t");
    private static final Pattern BARS = Pattern.compile("[|]");
    private static final Pattern SEMICOLONS = Pattern.compile(";");
    private static final Pattern COMMAS = Pattern.compile(",");
    private static final Pattern GAPS = Pattern.compile(" {2,}");
    private static final Pattern CELL = Pattern.compile("\\t| {2,}|[|;,]");
    private static final int LONGEST_HEAD = 4;
    /** As many rows below show that a line is a head. */
    private static final int LEAST_ROWS = 4;
    /** The head of a column that is flown in other weather. */
    private static final Set<String> ANOTHER_SHOW = Set.of(
            "flat", "low", "wet", "wx", "weather", "cloud", "rain", "rolling", "alternative", "alternate", "bad");
    /** The head of the column that is flown. */
    private static final Set<String> FLOWN = Set.of(
            "fig",
            "figure",
            "figures",
            "manoeuvre",
            "manoeuvres",
            "maneuver",
            "what",
            "full",
            "event",
            "sequence",
            "programme");

    private static final Set<String> SHOWN = Set.of("full", "high", "good", "dry", "fine", "normal");

    private static final Set<String> SHOW = Set.of("show", "display", "weather", "programme", "version");

    private static final Set<String> COUNTED = Set.of("fig", "figure", "no", "item", "seq", "number");
    /** Beside a column of names a "Fig" counts them. */
    private static final Set<String> NAMES =
            Set.of("name", "manoeuvre", "manoeuvres", "maneuver", "maneuvers", "description", "element", "title");

    static final Field NUMBER = new Field(List.of(), List.of(), Kind.SILENT);
    /** Who flies it, a cue, or what is flown in other weather. */
    private static final Field SILENT = new Field(List.of("silent"), List.of(), Kind.SILENT);
    /** Of a turn which way, of anything else at which end. */
    private static final Field SIDE = new Field(List.of(), List.of(), Kind.VALUE);

    static final Field REMARK = new Field(List.of(), List.of(), Kind.REMARK);

    /** "0:25", "140 kt": such a cell is of a row. */
    private static final Pattern VALUE =
            Pattern.compile("\\d{1,2}:\\d{2}|\\d[\\d.,]* ?(?:kts?|knots|mph|km/?h|ft|feet|m|s|secs?|seconds|g|x)\\b");

    static final Pattern BARE = Pattern.compile("\\d{1,6}(?:\\.\\d+)?");

    private Heads() {}

    /**
     * What the columns below a line hold, an unknown one as null; none if the line heads no table.
     *
     * @param folded the text
     * @param start where the line begins
     * @param end where it ends
     */
    static List<@Nullable Field> of(String folded, int start, int end) {
        String line = folded.substring(start, end);
        if (isOfShows(line)) {
            return split(line, parting(line), 0).stream()
                    .map(cell -> says(cell, ANOTHER_SHOW) ? SILENT : null)
                    .collect(Collectors.toCollection(ArrayList::new));
        }
        if (isHead(line)) {
            List<@Nullable Field> fields = new ArrayList<>();
            split(line, parting(line), 0).forEach(cell -> fields.add(field(cell.text())));
            return fields;
        }
        return isHeadOfRows(folded, start, end) ? fields(split(line, parting(line), 0)) : List.of();
    }

    /** What a column holds, by the words of its head. */
    record Field(List<String> before, List<String> after, Kind kind) {
        boolean isTime() {
            return kind == Kind.TIME;
        }
    }

    enum Kind {
        /** Something measured, or a place. */
        VALUE,
        TIME,
        /** Says nothing of the figure: the row's number, or who flies it. */
        SILENT,
        /** Says something of the figure and is none itself. */
        REMARK
    }

    /** Fields of a table of which not every head is known: what is flown stands in the first column that says nothing else. */
    private static List<@Nullable Field> fields(List<Part> heads) {
        List<@Nullable Field> fields = new ArrayList<>();
        boolean isNamed = heads.stream().anyMatch(head -> says(head, FLOWN));
        boolean hasNames = heads.stream().anyMatch(head -> says(head, NAMES));
        boolean isFlown = false;
        for (Part head : heads) {
            Field field = field(head.text());
            if (hasNames && !isFlown && says(head, COUNTED) && !says(head, NAMES)) {
                fields.add(NUMBER);
                continue;
            }
            boolean isHere =
                    field == null && !isFlown && (hasNames ? says(head, NAMES) : !isNamed || says(head, FLOWN));
            isFlown |= isHere;
            Field unknown = isFlown ? REMARK : isNamed ? SILENT : null;
            fields.add(says(head, ANOTHER_SHOW) ? SILENT : field == null && !isHere ? unknown : field);
        }
        return fields;
    }

    private static boolean says(Part head, Set<String> any) {
        return Words.of(head.text()).stream().map(Word::plain).anyMatch(any::contains);
    }

    /** Whether a line heads the rows below it, which are parted as it is; one of its heads is known. */
    private static boolean isHeadOfRows(String folded, int start, int end) {
        String line = folded.substring(start, end);
        Pattern parting = parting(line);
        if (parting.equals(COMMAS) || parting.equals(GAPS)) {
            return false;
        }
        List<Part> cells = split(line, parting, 0);
        boolean isHead = cells.size() > LEAST_HEADS
                && cells.stream()
                        .allMatch(cell -> !BARE.matcher(cell.text()).matches()
                                && !VALUE.matcher(cell.text()).lookingAt()
                                && Words.of(cell.text()).size() <= LONGEST_HEAD)
                && cells.stream().anyMatch(cell -> field(cell.text()) != null);
        if (!isHead) {
            return false;
        }
        int rows = 0;
        int from = end + 1;
        while (from < folded.length() && rows < LEAST_ROWS) {
            int to = folded.indexOf('\n', from);
            to = to < 0 ? folded.length() : to;
            List<Part> row = split(folded.substring(from, to), parting, 0);
            if (row.size() < LEAST_HEADS || row.size() > cells.size()) {
                return false;
            }
            rows++;
            from = to + 1;
        }
        return rows == LEAST_ROWS;
    }

    private static boolean isHead(String line) {
        if (!CELL.matcher(line.strip()).find()) {
            return false;
        }
        List<Word> words = Words.of(line);
        return isHeadInOtherWords(line)
                || (words.size() > 1
                        && words.stream().allMatch(Manner.COLUMN::has)
                        && split(line, parting(line), 0).stream().anyMatch(part -> field(part.text()) != null));
    }

    /** "Notes for commentary": cells that are parted by more than commas may have a further word, if enough of them are known. */
    private static boolean isHeadInOtherWords(String line) {
        Pattern parting = parting(line);
        List<Part> cells = split(line, parting, 0).stream()
                .filter(part -> !part.text().isEmpty())
                .toList();
        return !parting.equals(COMMAS)
                && cells.size() > LEAST_HEADS
                && cells.stream().allMatch(cell -> {
                    List<Word> words = Words.of(cell.text());
                    return !words.isEmpty()
                            && words.size() <= LEAST_HEADS
                            && Manner.COLUMN.hasAny(words)
                            && words.stream().noneMatch(word -> word.number() != null);
                })
                && cells.stream().filter(cell -> field(cell.text()) != null).count() >= LEAST_HEADS;
    }

    /** "FULL | LOW | FLAT": each column is flown in other weather. */
    private static boolean isOfShows(String line) {
        List<Part> cells = split(line, parting(line), 0).stream()
                .filter(cell -> !cell.text().isEmpty())
                .toList();
        return cells.size() > 1
                && cells.stream().anyMatch(cell -> says(cell, ANOTHER_SHOW))
                && cells.stream().anyMatch(cell -> says(cell, SHOWN) && !says(cell, ANOTHER_SHOW))
                && cells.stream()
                        .allMatch(cell -> Words.of(cell.text()).stream()
                                .map(Word::plain)
                                .allMatch(word ->
                                        SHOWN.contains(word) || ANOTHER_SHOW.contains(word) || SHOW.contains(word)));
    }

    static Pattern parting(String line) {
        return line.indexOf('\t') >= 0
                ? TABS
                : line.indexOf('|') >= 0
                        ? BARS
                        : line.indexOf(';') >= 0 ? SEMICOLONS : line.indexOf(',') >= 0 ? COMMAS : GAPS;
    }

    /** A cell and where its words begin. */
    record Part(int start, String text) {}

    static List<Part> split(String line, Pattern parting, int start) {
        List<Part> parts = new ArrayList<>();
        int from = parting.equals(GAPS) ? line.length() - line.stripLeading().length() : 0;
        Matcher found = parting.matcher(line).region(from, line.length());
        while (found.find()) {
            parts.add(part(line, from, found.start(), start));
            from = found.end();
        }
        parts.add(part(line, from, line.length(), start));
        return parts;
    }

    private static Part part(String line, int from, int to, int start) {
        String cell = line.substring(from, to);
        int at = start + from + cell.length() - cell.stripLeading().length();
        String text = cell.strip();
        boolean isQuoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
        String inside = isQuoted ? text.substring(1, text.length() - 1) : text;
        return isQuoted && BARE.matcher(inside).matches() ? new Part(at + 1, inside) : new Part(at, text);
    }

    private static @Nullable Field field(String head) {
        List<String> words = Words.plain(Words.of(head));
        if (head.matches("t ?\\+?")
                || has(words, "elapsed", "cumulative", "cum", "running", "clock", "since", "start")) {
            return new Field(List.of(), List.of(), Kind.TIME);
        }
        if (has(words, "exit") && words.size() > 1) {
            return REMARK;
        }
        boolean isFast = has(words, "speed", "spd", "airspeed");
        boolean isHigh = !isFast && has(words, "height", "alt", "altitude", "hgt", "ht");
        if (isFast
                || (!isHigh
                        && has(
                                words,
                                "kt",
                                "kias",
                                "ias",
                                "velocity",
                                "v",
                                "vel",
                                "entry",
                                "mph",
                                "km",
                                "kmh",
                                "kph"))) {
            return unit(has(words, "mph") ? "mph" : has(words, "km", "kmh", "kph") ? "kmh" : "kt");
        }
        if (isHigh || has(words, "base", "ft", "metre", "m")) {
            return unit(has(words, "metre", "m") ? "metre" : "ft");
        }
        if (has(words, "time", "duration", "dur", "length", "s", "min", "timing")) {
            return new Field(List.of(), List.of(has(words, "min") ? "min" : "s"), Kind.TIME);
        }
        if (has(words, "g", "gs")) {
            return unit("g");
        }
        if (has(words, "side")) {
            return SIDE;
        }
        if (has(words, "where", "place", "position", "location", "end")) {
            return new Field(List.of(), List.of("end"), Kind.VALUE);
        }
        if (has(words, "who", "crew", "callsign", "ship", "aircraft")) {
            return SILENT;
        }
        if (has(words, "note", "remark", "comment")) {
            return REMARK;
        }
        if (has(words, "no", "nr", "number", "seq", "order", "item", "ser", "serial") && words.size() == 1) {
            return NUMBER;
        }
        return words.equals(List.of("from")) ? new Field(List.of("from"), List.of(), Kind.VALUE) : null;
    }

    private static Field unit(String unit) {
        return new Field(List.of(), List.of(unit), Kind.VALUE);
    }

    private static boolean has(List<String> words, String... any) {
        return words.stream().anyMatch(List.of(any)::contains);
    }
}
