package crowdline.list.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A table that a spreadsheet wrote with commas or semicolons between its cells, and cells with commas of their own in quotes (RFC 4180). */
final class Commas {
    /** Fewer rows with as many cells may be a list by chance. */
    private static final int LEAST_ROWS = 4;

    private static final int LEAST_CELLS = 3;

    private static final Set<String> FLOWN = Set.of(
            "figure", "figures", "manoeuvre", "manoeuvres", "maneuver", "maneuvers", "element", "item", "what", "name");

    private static final Pattern CELL = Pattern.compile("(?:\"(?:[^\"\\n]|\"\")*\"|[^\",\\n]*)(?=(,)|$)");

    private static final Pattern SEMICOLON_CELL = Pattern.compile(CELL.pattern().replace(',', ';'));

    /** A cell that begins with what kind of figure it is. */
    private static final Pattern TURNED = Pattern.compile(
            "(?m)(?<=[;|\\t]) ?(?:rolls?|pass|turn|cuban|loop|spin|eight)(?<comma>,) [\\p{L}\\d -]{3,20}(?= ?[;|\\t])");

    private static final int LEAST_TURNED = 3;

    private static final Pattern NUMBER = Pattern.compile("\\W*\\d[\\d.]*\\W*");

    private Commas() {}

    /** The text, as long as it was, with bars in place of the commas between cells and no quotes, where it has such a table. */
    static String mended(String folded) {
        String parted = turned(mended(folded, CELL));
        return folded.indexOf('"') < 0 ? parted : mended(parted, SEMICOLON_CELL);
    }

    /** The same without the commas of names in a table that are turned round: "roll, flick". */
    private static String turned(String folded) {
        Matcher found = TURNED.matcher(folded);
        if (found.results().count() < LEAST_TURNED) {
            return folded;
        }
        StringBuilder turned = new StringBuilder(folded);
        found.reset();
        while (found.find()) {
            turned.setCharAt(found.start("comma"), ' ');
        }
        return turned.toString();
    }

    private static String mended(String folded, Pattern cell) {
        StringBuilder mended = new StringBuilder(folded);
        int start = 0;
        while (start < folded.length()) {
            int end = lineEnd(folded, start);
            List<Integer> commas = isHead(folded.substring(start, end)) ? commas(folded, start, end, cell) : List.of();
            int last = commas.size() + 1 < LEAST_CELLS ? start : lastRow(folded, start, commas.size(), cell);
            if (last > start) {
                part(folded, mended, start, last, cell);
                end = last;
            }
            start = end + 1;
        }
        return mended.toString();
    }

    /** Where the rows end that have as many commas as their head; where it begins if they are too few. */
    private static int lastRow(String folded, int head, int commas, Pattern cell) {
        int rows = 0;
        int start = head;
        int end = head;
        while (start < folded.length()
                && commas(folded, start, lineEnd(folded, start), cell).size() == commas) {
            end = lineEnd(folded, start);
            rows++;
            start = end + 1;
        }
        return rows > LEAST_ROWS ? end : head;
    }

    private static void part(String folded, StringBuilder mended, int from, int to, Pattern cell) {
        int start = from;
        while (start < to) {
            int end = lineEnd(folded, start);
            commas(folded, start, end, cell).forEach(comma -> mended.setCharAt(comma, '|'));
            for (int i = start; i < end; i++) {
                if (folded.charAt(i) == '"') {
                    mended.setCharAt(i, ' ');
                }
            }
            start = end + 1;
        }
    }

    private static boolean isHead(String line) {
        List<String> cells = List.of(line.split("[,;]", -1));
        return cells.stream().map(cell -> cell.replace("\"", "").strip()).anyMatch(FLOWN::contains)
                && cells.stream().noneMatch(cell -> NUMBER.matcher(cell).matches());
    }

    /** Where the commas of a line stand that part cells. */
    private static List<Integer> commas(String folded, int start, int end, Pattern form) {
        List<Integer> commas = new ArrayList<>();
        Matcher cell = form.matcher(folded).region(start, end);
        int at = start;
        while (cell.region(at, end).lookingAt() && cell.group(1) != null) {
            commas.add(cell.start(1));
            at = cell.end(1);
        }
        return commas;
    }

    private static int lineEnd(String text, int start) {
        int end = text.indexOf('\n', start);
        return end < 0 ? text.length() : end;
    }
}
