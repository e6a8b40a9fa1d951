package crowdline.storage.passes;

import crowdline.storage.file.CsvFields;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.storage.json.Quoted;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The times of one pass as a table: comma-separated {@code figure,startS,endS} in UTF-8, quoted as RFC 4180 has it, with or
 * without those words as a first line; in the order flown.
 */
public final class PassTimesFile {
    private static final List<String> HEAD = List.of("figure", "starts", "ends");

    private PassTimesFile() {}

    /**
     * One timed figure.
     *
     * @param figureId as written, not blank
     * @param startS seconds on any scale
     * @param endS seconds on the same scale, after {@code startS}
     * @param line where it stands in the file, from 1
     */
    public record Row(String figureId, double startS, double endS, int line) {}

    /**
     * Reads the rows; empty lines are passed over.
     *
     * @throws ShowFileException if the file cannot be read, has no row, or a row is unsound, with line, column and value
     */
    public static List<Row> read(Path file) throws ShowFileException {
        ShowText text = ShowText.decode(ShowText.bytes(file));
        ShowText.Fault fault = text.fault();
        if (fault != null) {
            throw ShowFileException.at(file, fault.where(), fault.message());
        }
        List<Row> rows = new ArrayList<>();
        for (List<CsvFields.Field> fields : CsvFields.of(file, text.text())) {
            if (!rows.isEmpty() || !isHead(fields)) {
                rows.add(row(file, fields, rows.isEmpty() ? null : rows.get(rows.size() - 1)));
            }
        }
        if (rows.isEmpty()) {
            throw new ShowFileException(file + " holds no figure; a line is its id, its start and its end in seconds");
        }
        return List.copyOf(rows);
    }

    private static boolean isHead(List<CsvFields.Field> fields) {
        return fields.stream()
                .map(f -> f.text().strip().toLowerCase(Locale.ROOT))
                .toList()
                .equals(HEAD);
    }

    private static Row row(Path file, List<CsvFields.Field> fields, @Nullable Row before) throws ShowFileException {
        CsvFields.Field figure = fields.get(0);
        if (fields.size() != HEAD.size()) {
            throw ShowFileException.at(
                    file,
                    figure.where(),
                    "the line has " + fields.size() + (fields.size() == 1 ? " value" : " values")
                            + "; it must be figure, start and end, such as loop,12.5,24");
        }
        if (figure.text().isBlank()) {
            throw ShowFileException.at(file, figure.where(), "the figure is empty; write its id");
        }
        double startS = seconds(file, fields.get(1));
        double endS = seconds(file, fields.get(2));
        if (!(endS > startS)) {
            throw ShowFileException.at(
                    file,
                    fields.get(2).where(),
                    "the end, " + fields.get(2).text().strip() + ", must be after the start, "
                            + fields.get(1).text().strip());
        }
        if (before != null && startS < before.endS()) {
            throw ShowFileException.at(
                    file,
                    fields.get(1).where(),
                    "the start, " + fields.get(1).text().strip() + ", is before the end of line " + before.line()
                            + "; write the figures in the order flown");
        }
        return new Row(figure.text().strip(), startS, endS, figure.where().line());
    }

    private static double seconds(Path file, CsvFields.Field field) throws ShowFileException {
        String written = field.text().strip();
        // Not every text that Java takes for a number is one to a person: "1e3", "0x1p3", "NaN", "2f".
        if (written.matches("[0-9]{1,6}(\\.[0-9]{1,9})?")) {
            return Double.parseDouble(written);
        }
        throw ShowFileException.at(
                file,
                field.where(),
                Quoted.text(written) + " is not a time; it must be seconds from 0 with a full stop, such as 12.5");
    }
}
