package crowdline.list.word;

import crowdline.list.word.Heads.Field;
import crowdline.list.word.Heads.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
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

    private static final int RUNNING = 6;

    /** No figure lasts as many minutes as the hours of a display day. */
    private static final int FIRST_HOUR = 7;

    /** What parts two things that begin with their times. */
    private static final String PARTING = "\n,;→>.";

    private static final Pattern AMOUNT =
            Pattern.compile("(?:(\\d{0,3}):)?(\\d{1,4}(?:\\.\\d+)?)(?: ?(?:s|secs?|seconds?))?");
    /** What counts the rows of a table. */
    private static final Pattern COUNT = Pattern.compile("[a-z]|\\d{1,6}(?:\\.\\d+)?");

    private static final Pattern CLOCK = Pattern.compile(
            "[\\s>*\\-•(\\[]{0,8}(?:#?\\d{1,3}[.):]?\\s+)?(?<from>(?:t? ?\\+ ?|at )?(\\d{1,2}):(\\d{2})(?::(\\d{2}))?)(?!\\d)"
                    + "(?:\\s?(?:-|to|until)\\s?(\\d{1,2}:\\d{2})(?!\\d))?");

    /** "11.10 aircraft runs in": only of the day. */
    private static final Pattern DOTTED =
            Pattern.compile(CLOCK.pattern().replace("(\\d{1,2}):(\\d{2})", "(\\d{1,2})\\.(\\d{2})"));

    private static final Pattern MINUTES = Pattern.compile(
            "(?m)^[ \\t>*•-]{0,8}(?:at |t? ?\\+ ?|after )?(?<from>(?<time>\\d{1,2})) ?min(?:ute)?s?\\b[.:]?");

    /** "T+95 s", "T-10": from the exit of jumpers, or from take-off. */
    private static final Pattern FROM_ZERO = Pattern.compile(
            "(?m)^[ \\t>*•]{0,8}(?<from>t ?(?<time>[+-] ?\\d{1,4}))(?: ?s(?:ecs?)?)?(?=[\\s:,])(?!:\\d)");

    /** "1600 take-off": the hour as soldiers and pilots write it. */
    private static final Pattern HOURS = Pattern.compile(
            "(?m)^[ \\t>*•+.-]{0,8}(?<from>(?<time>(?:0[6-9]|1\\d|2[0-3])[0-5]\\d))(?: ?(?:h|hrs|z|l|local))?(?=[ \\t:])");

    /** "[30-50s] loop": from when to when. */
    private static final Pattern STRETCH = Pattern.compile(
            "(?m)^[ \\t>*•]{0,8}[\\[(]?(?<from>(?<time>\\d{1,4}) ?(?:s ?)?-(?: ?\\d{1,4}) ?s(?:ecs?)?\\b)[\\])]?");

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
        columns.readClocks(folded, CLOCK);
        if (columns.elapsed.isEmpty()) {
            columns.readClocks(folded, DOTTED);
        }
        columns.readBegins(folded, MINUTES);
        columns.readBegins(folded, FROM_ZERO);
        columns.readBegins(folded, HOURS);
        columns.readBegins(folded, STRETCH);
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
            List<@Nullable Field> head = Heads.of(folded, start, end);
            if (!head.isEmpty()) {
                headEnds.put(start, end);
                take(cells);
                parting = Heads.parting(line);
                heads = head;
            } else if (parting != null) {
                addCells(line, parting, start, heads, cells);
            }
            start = end + 1;
        }
        take(cells);
    }

    private static void addCells(
            String line, Pattern parting, int start, List<@Nullable Field> heads, List<Cell> cells) {
        List<Part> parts = Heads.split(line, parting, start);
        boolean isCounted = parts.size() == heads.size() + 1
                && !Heads.NUMBER.equals(heads.get(0))
                && COUNT.matcher(parts.get(0).text()).matches();
        parts = isCounted ? parts.subList(1, parts.size()) : parts;
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
            if (cell.field().kind() == Heads.Kind.SILENT) {
                if (!cell.field().equals(Heads.NUMBER)
                        || (cell.column() == 0 && COUNT.matcher(cell.text()).matches())) {
                    elapsed.put(cell.start(), cell.end());
                }
                continue;
            }
            if (cell.field().kind() == Heads.Kind.REMARK) {
                remarks.put(cell.start(), cell.end());
                continue;
            }
            boolean isPlace = cell.field().after().contains("end")
                    || cell.field().before().contains("from");
            if (isPlace ? isSide : Heads.BARE.matcher(cell.text()).matches()) {
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
                    // ":40" is a word from its digits on.
                    elapsed.put(cell.start() + cell.text().indexOf(':') + 1, cell.end());
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
        boolean isShort = found.group(1) == null || found.group(1).isEmpty();
        double minutes = isShort ? 0 : Double.parseDouble(found.group(1));
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
    private void readClocks(String folded, Pattern clock) {
        if (!readClocks(folded, clock, PARTING)) {
            readClocks(folded, clock, "\n");
        }
    }

    /** Times behind any of these letters; false if they are none of a clock. */
    private boolean readClocks(String folded, Pattern clock, String behind) {
        List<int[]> clocks = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        int start = 0;
        while (start < folded.length()) {
            int end = partEnd(folded, start, behind);
            Matcher found = clock.matcher(folded).region(start, end);
            if (found.lookingAt()) {
                clocks.add(new int[] {found.start("from"), found.end()});
                if (found.group(5) != null) {
                    clocks.add(new int[] {found.start(5), found.end(5)});
                }
                String last = found.group(4);
                times.add(Double.parseDouble(found.group(2)) * 3600
                        + Double.parseDouble(found.group(3)) * 60
                        + (last == null ? 0 : Double.parseDouble(last)));
            }
            start = end + 1;
        }
        boolean isOfTheDay = isTimeOfDay(times);
        boolean isClock = isOfTheDay
                || (clock.equals(CLOCK) ? rises(times) || isRunning(times) : rises(times) && times.size() >= RUNNING);
        if (isClock) {
            clocks.forEach(place -> elapsed.put(place[0], place[1]));
        }
        return isClock;
    }

    /** Lines that begin with minutes or seconds, each later than the one before: "1 min climb", "T+95 spin". */
    private void readBegins(String folded, Pattern begin) {
        List<int[]> places = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        Matcher found = begin.matcher(folded);
        while (found.find()) {
            places.add(new int[] {found.start("from"), found.end()});
            times.add(Double.valueOf(found.group("time").replace(" ", "")));
        }
        if (rises(times)) {
            places.forEach(place -> elapsed.put(place[0], place[1]));
        }
    }

    /** Two things may happen within a minute of the day, but two figures do not last as long by chance, and so long. */
    private static boolean isTimeOfDay(List<Double> times) {
        boolean isSorted = times.equals(times.stream().sorted().toList());
        return isSorted && times.stream().distinct().count() >= RISING && times.get(0) >= FIRST_HOUR * 3600;
    }

    /** As many times that never fall are no durations, though two rows may have one. */
    private static boolean isRunning(List<Double> times) {
        boolean isSorted = times.equals(times.stream().sorted().toList());
        return isSorted && times.stream().distinct().count() >= RUNNING;
    }

    private static int partEnd(String folded, int start, String parting) {
        int end = start;
        while (end < folded.length() && parting.indexOf(folded.charAt(end)) < 0) {
            end++;
        }
        return end;
    }
}
