package crowdline.list.word;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The columns of a text that is a table, or that begins its lines with times. A bare number under "Speed" is read as if
 * it had a unit; a time of day, or since the act began, is taken for no duration.
 */
final class Columns {
    /** Fewer times that rise may be durations by chance. */
    private static final int RISING = 3;

    /** No figure lasts as many minutes as the hours of a display day. */
    private static final int FIRST_HOUR = 7;

    /** What parts two things that begin with their times. */
    private static final String PARTING = "\n,;→>";

    /** Fewer do not make a line the head of a table, and a head has no more words. */
    private static final int LEAST_HEADS = 3;

    private static final int LONGEST_HEAD = 4;
    /** As many rows below show that a line is a head. */
    private static final int LEAST_ROWS = 4;

    /** The head of a column that is flown in other weather. */
    private static final Set<String> ANOTHER_SHOW =
            Set.of("flat", "low", "wet", "wx", "weather", "cloud", "rain", "rolling", "alternative", "alternate", "bad");

    /** The head of the column that is flown. */
    private static final Set<String> FLOWN = Set.of(
            "fig", "figure", "figures", "manoeuvre", "manoeuvres", "maneuver", "what", "full", "event", "sequence", "programme");

    private static final Pattern CELL = Pattern.compile("\\t| {2,}|[|;,]");
    private static final Pattern TABS = Pattern.compile("\\t");
    private static final Pattern BARS = Pattern.compile("[|]");
    private static final Pattern SEMICOLONS = Pattern.compile(";");
    private static final Pattern COMMAS = Pattern.compile(",");
    private static final Pattern GAPS = Pattern.compile(" {2,}");
    private static final Pattern BARE = Pattern.compile("\\d{1,6}(?:\\.\\d+)?");
    private static final Pattern AMOUNT =
            Pattern.compile("(?:(\\d{1,3}):)?(\\d{1,4}(?:\\.\\d+)?)(?: ?(?:s|secs?|seconds?))?");
    private static final Pattern CLOCK = Pattern.compile(
            "[\\s>*\\-•(\\[]{0,8}(?:#?\\d{1,3}[.):]?\\s+)?(?:t? ?\\+ ?)?(\\d{1,2}):(\\d{2})(?::(\\d{2}))?(?!\\d)"
                    + "(?:\\s?(?:-|to|until)\\s?(\\d{1,2}:\\d{2})(?!\\d))?");

    /** What a column holds, by the words of its head. */
    private record Field(List<String> before, List<String> after, Kind kind) {
        boolean isTime() {
            return kind == Kind.TIME;
        }
    }

    private enum Kind {
        /** Something measured, or a place. */
        VALUE,
        TIME,
        /** Says nothing of the figure: the row's number, or who flies it. */
        SILENT,
        /** Says something of the figure and is none itself. */
        REMARK
    }

    private static final Field NUMBER = new Field(List.of(), List.of(), Kind.SILENT);
    private static final Field WHO = new Field(List.of("who"), List.of(), Kind.SILENT);
    private static final Field REMARK = new Field(List.of(), List.of(), Kind.REMARK);

    /** A cell under a head that says what it holds. */
    private record Cell(int start, int end, String text, Field field, int column) {}

    /** Ahead of which place in the text which words are to be thought. */
    private final Map<Integer, Field> fields = new HashMap<>();
    /** Where times begin that are no durations, and where they end. */
    private final Map<Integer, Integer> elapsed = new HashMap<>();
    /** Where remarks begin, and where they end. */
    private final NavigableMap<Integer, Integer> remarks = new TreeMap<>();

    /** Where the lines of heads begin, and where they end. */
    private final NavigableMap<Integer, Integer> headEnds = new TreeMap<>();

    private Columns() {}

    /** The columns of a text that is {@link Words#folded}. */
    static Columns of(String folded) {
        Columns columns = new Columns();
        columns.readTables(folded);
        columns.readClocks(folded);
        return columns;
    }

    /** Whether a place of the text stands in a column of remarks. */
    boolean isRemark(int at) {
        return isWithin(remarks, at);
    }

    /** Whether a place of the text stands in the head of a table. */
    boolean isHead(int at) {
        return isWithin(headEnds, at);
    }

    private static boolean isWithin(NavigableMap<Integer, Integer> stretches, int at) {
        Map.Entry<Integer, Integer> before = stretches.floorEntry(at);
        return before != null && at < before.getValue();
    }

    /** The words of a stretch of the text, with the units that the heads of columns give. */
    List<Word> with(List<Word> words) {
        if (fields.isEmpty() && elapsed.isEmpty()) {
            return words;
        }
        List<Word> all = new ArrayList<>();
        int silentTo = -1;
        for (Word word : words) {
            silentTo = Math.max(silentTo, elapsed.getOrDefault(word.start(), -1));
            if (word.start() < silentTo) {
                continue;
            }
            Field field = fields.get(word.start());
            if (field == null) {
                all.add(word);
            } else {
                field.before().forEach(plain -> all.add(thought(plain, word)));
                all.add(word);
                field.after().forEach(plain -> all.add(thought(plain, word)));
            }
        }
        return all;
    }

    private static Word thought(String plain, Word beside) {
        return new Word(plain, beside.start(), beside.end(), null);
    }

    private void readTables(String folded) {
        Pattern parting = null;
        List<@Nullable Field> heads = List.of();
        List<Cell> cells = new ArrayList<>();
        int start = 0;
        while (start <= folded.length()) {
            int end = folded.indexOf('\n', start);
            end = end < 0 ? folded.length() : end;
            String line = folded.substring(start, end);
            if (isHead(line) || isHeadOfRows(folded, start, end)) {
                headEnds.put(start, end);
                take(cells);
                parting = parting(line);
                heads = isHead(line)
                        ? split(line, parting, 0).stream()
                                .map(cell -> field(cell.text()))
                                .toList()
                        : fields(split(line, parting, 0));
            } else if (parting != null) {
                addCells(line, parting, start, heads, cells);
            }
            start = end + 1;
        }
        take(cells);
    }

    /** Fields of a table of which not every head is known: what is flown stands in the first column that says nothing else. */
    private static List<@Nullable Field> fields(List<Part> heads) {
        List<@Nullable Field> fields = new ArrayList<>();
        boolean isNamed = heads.stream().anyMatch(head -> says(head, FLOWN));
        boolean isFlown = false;
        for (Part head : heads) {
            Field field = field(head.text());
            boolean isHere = field == null && !isFlown && (!isNamed || says(head, FLOWN));
            isFlown |= isHere;
            fields.add(says(head, ANOTHER_SHOW) ? WHO : field == null && !isHere && isFlown ? REMARK : field);
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

    private static void addCells(
            String line, Pattern parting, int start, List<@Nullable Field> heads, List<Cell> cells) {
        List<Part> parts = split(line, parting, start);
        for (int i = 0; i < Math.min(parts.size(), heads.size()); i++) {
            Field field = heads.get(i);
            Part part = parts.get(i);
            if (field != null && !part.text().isEmpty()) {
                cells.add(new Cell(part.start(), part.start() + part.text().length(), part.text(), field, i));
            }
        }
    }

    /** Keeps what the cells below one head hold. */
    private void take(List<Cell> cells) {
        Map<Integer, List<Cell>> times = new HashMap<>();
        for (Cell cell : cells) {
            boolean isSide = cell.text().matches("l|r|left|right");
            if (cell.field().isTime() && AMOUNT.matcher(cell.text()).matches()) {
                times.computeIfAbsent(cell.column(), c -> new ArrayList<>()).add(cell);
            }
            if (cell.field().kind() == Kind.SILENT) {
                if (!cell.field().equals(NUMBER)
                        || (cell.column() == 0 && BARE.matcher(cell.text()).matches())) {
                    elapsed.put(cell.start(), cell.end());
                }
                continue;
            }
            if (cell.field().kind() == Kind.REMARK) {
                remarks.put(cell.start(), cell.end());
                continue;
            }
            boolean isPlace = cell.field().after().contains("end")
                    || cell.field().before().contains("from");
            if (isPlace ? isSide : BARE.matcher(cell.text()).matches()) {
                fields.put(cell.start(), cell.field());
            }
        }
        for (List<Cell> column : times.values()) {
            boolean isElapsed = column.get(0).field().after().isEmpty()
                    || rises(column.stream().map(cell -> seconds(cell.text())).toList());
            if (isElapsed) {
                column.forEach(cell -> {
                    fields.remove(cell.start());
                    elapsed.put(cell.start(), cell.end());
                });
            }
        }
        cells.clear();
    }

    private static double seconds(String amount) {
        Matcher found = AMOUNT.matcher(amount);
        if (!found.matches()) {
            return 0;
        }
        double minutes = found.group(1) == null ? 0 : Double.parseDouble(found.group(1));
        return minutes * 60 + Double.parseDouble(found.group(2));
    }

    private static boolean rises(List<Double> times) {
        for (int i = 1; i < times.size(); i++) {
            if (times.get(i) <= times.get(i - 1)) {
                return false;
            }
        }
        return times.size() >= RISING;
    }

    /** Lines that begin with a time, each later than the one before. */
    private void readClocks(String folded) {
        List<int[]> clocks = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        int start = 0;
        while (start < folded.length()) {
            int end = partEnd(folded, start);
            Matcher found = CLOCK.matcher(folded).region(start, end);
            if (found.lookingAt()) {
                clocks.add(new int[] {found.start(1), found.end()});
                if (found.group(4) != null) {
                    clocks.add(new int[] {found.start(4), found.end(4)});
                }
                String last = found.group(3);
                times.add(Double.parseDouble(found.group(1)) * 3600
                        + Double.parseDouble(found.group(2)) * 60
                        + (last == null ? 0 : Double.parseDouble(last)));
            }
            start = end + 1;
        }
        if (rises(times) || isTimeOfDay(times)) {
            clocks.forEach(clock -> elapsed.put(clock[0], clock[1]));
        }
    }

    /** Two things may happen within a minute of the day, but two figures do not last as long by chance, and so long. */
    private static boolean isTimeOfDay(List<Double> times) {
        boolean isSorted = times.equals(times.stream().sorted().toList());
        return isSorted && times.stream().distinct().count() >= RISING && times.get(0) >= FIRST_HOUR * 3600;
    }

    private static int partEnd(String folded, int start) {
        int end = start;
        while (end < folded.length() && PARTING.indexOf(folded.charAt(end)) < 0) {
            end++;
        }
        return end;
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

    private static Pattern parting(String line) {
        return line.indexOf('\t') >= 0
                ? TABS
                : line.indexOf('|') >= 0
                        ? BARS
                        : line.indexOf(';') >= 0 ? SEMICOLONS : line.indexOf(',') >= 0 ? COMMAS : GAPS;
    }

    /** A cell and where its words begin. */
    private record Part(int start, String text) {}

    private static List<Part> split(String line, Pattern parting, int start) {
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
        return new Part(start + from + cell.length() - cell.stripLeading().length(), cell.strip());
    }

    private static @Nullable Field field(String head) {
        List<String> words = Words.of(head).stream().map(Word::plain).toList();
        if (has(words, "elapsed", "cumulative", "cum", "running", "clock", "since", "start")) {
            return new Field(List.of(), List.of(), Kind.TIME);
        }
        if (has(words, "speed", "spd", "kt", "kias", "entry", "mph", "km", "kmh", "kph")) {
            return unit(has(words, "mph") ? "mph" : has(words, "km", "kmh", "kph") ? "kmh" : "kt");
        }
        if (has(words, "height", "alt", "altitude", "base", "ft", "hgt", "ht", "metre", "m")) {
            return unit(has(words, "metre", "m") ? "metre" : "ft");
        }
        if (has(words, "time", "duration", "dur", "length", "s", "min", "timing")) {
            return new Field(List.of(), List.of(has(words, "min") ? "min" : "s"), Kind.TIME);
        }
        if (has(words, "where", "place", "position", "location", "end", "side")) {
            return new Field(List.of(), List.of("end"), Kind.VALUE);
        }
        if (has(words, "who", "crew", "callsign", "ship", "aircraft")) {
            return WHO;
        }
        if (has(words, "note", "remark", "comment")) {
            return REMARK;
        }
        if (has(words, "no", "nr", "number", "seq", "order", "item", "ser", "serial") && words.size() == 1) {
            return NUMBER;
        }
        return has(words, "from") ? new Field(List.of("from"), List.of(), Kind.VALUE) : null;
    }

    private static Field unit(String unit) {
        return new Field(List.of(), List.of(unit), Kind.VALUE);
    }

    private static boolean has(List<String> words, String... any) {
        return words.stream().anyMatch(List.of(any)::contains);
    }
}
