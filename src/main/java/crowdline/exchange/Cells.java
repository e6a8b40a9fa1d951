package crowdline.exchange;

import crowdline.storage.file.CsvFields;
import crowdline.storage.file.LineLimits;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Rows of cells as a spreadsheet hands them over: copied, or saved as text. */
final class Cells {
    /** An organiser's table has a column for everybody; few have more than thirty. */
    private static final int MOST_IN_A_ROW = 100;

    /** Rows of a whole season with all their words; what is longer is a document, or the wrong file. */
    private static final int MOST_LETTERS = 2_000_000;

    private Cells() {}

    /**
     * The rows that are not blank, and where each cell begins. What stands between cells is found out: tabs as copied, commas or
     * semicolons as saved.
     *
     * @param name of the file, or what to call it
     * @throws ShowFileException if it is no table, with line and column, or too large
     */
    static List<Row> of(Path name, String text) throws ShowFileException {
        if (text.length() > MOST_LETTERS) {
            throw new ShowFileException(String.format(
                    Locale.UK,
                    "%s is %,d letters long; the limit is %,d, so take the rows of the table alone, or fewer of them",
                    name,
                    text.length(),
                    MOST_LETTERS));
        }
        String whole = text.startsWith("\uFEFF") ? text.substring(1) : text;
        if (whole.indexOf('\0') >= 0) {
            throw new ShowFileException(
                    name + " is not text; save the table as comma-separated values, or copy its cells");
        }
        List<Row> rows = CsvFields.of(name, whole, separator(whole), MOST_IN_A_ROW).stream()
                .map(Row::of)
                .toList();
        if (rows.isEmpty()) {
            throw new ShowFileException(name + " holds no cells; copy the rows of the table, with their headings");
        }
        if (rows.size() > LineLimits.LINES) {
            throw new ShowFileException(name + ": " + LineLimits.tooManyLines(LineLimits.LINES));
        }
        return rows;
    }

    private static char separator(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).limit(5).reduce("", (a, b) -> a + '\n' + b);
        boolean quoted = false;
        int[] counts = new int[3];
        for (int i = 0; i < first.length(); i++) {
            char c = first.charAt(i);
            quoted ^= c == '"';
            int which = quoted ? -1 : "\t;,".indexOf(c);
            if (which >= 0) {
                counts[which]++;
            }
        }
        return counts[0] > 0 ? '\t' : counts[1] > counts[2] ? ';' : ',';
    }

    /** Comma-separated cells of this program's own, each in quotes where it is text, with something else between them. */
    static String separatedBy(char separator, String commas) {
        StringBuilder text = new StringBuilder(commas);
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            quoted ^= c == '"';
            if (c == ',' && !quoted) {
                text.setCharAt(i, separator);
            }
        }
        return text.toString();
    }

    /**
     * One row.
     *
     * @param line of the text, from 1
     * @param said what each cell says, on one line
     */
    record Row(int line, List<String> said) {
        private static final Pattern BLANKS = Pattern.compile("\\s+");
        /** As this program writes what a spreadsheet would take for a formula. */
        private static final Pattern HARMLESS = Pattern.compile("'[=+\\-@]");

        Row {
            said = List.copyOf(said);
        }

        private static Row of(List<CsvFields.Field> cells) {
            return new Row(
                    cells.get(0).where().line(),
                    cells.stream().map(cell -> said(cell.text())).toList());
        }

        private static String said(String text) {
            String said = BLANKS.matcher(text).replaceAll(" ").strip();
            return HARMLESS.matcher(said).lookingAt() ? said.substring(1) : said;
        }

        /** What a cell says; empty where there is none, or no such column. */
        String text(int column) {
            return column < 0 || column >= said.size() ? "" : said.get(column);
        }

        int width() {
            return said.size();
        }

        Stream<String> texts() {
            return said.stream();
        }
    }
}
