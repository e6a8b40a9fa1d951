package crowdline.storage.passes;

import crowdline.storage.file.CsvFields;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Remarks that a speaker said against a stopwatch: comma-separated {@code seconds,text} in UTF-8, quoted as RFC 4180 has
 * it, with or without those two words as a first line.
 */
public final class TimedFile {
    private static final List<String> HEAD = List.of("seconds", "text");
    private static final int LONGEST_QUOTE = 40;

    private TimedFile() {}

    /**
     * One timed remark.
     *
     * @param seconds as written, above 0
     * @param text as written, not blank
     * @param line where it stands in the file, from 1
     */
    public record Row(double seconds, String text, int line) {}

    /**
     * Reads the rows in their order; empty lines are passed over.
     *
     * @throws ShowFileException if the file cannot be read or a row is unsound, with line, column and value
     */
    public static List<Row> read(Path file) throws ShowFileException {
        ShowText text = ShowText.decode(ShowText.bytes(file));
        ShowText.Fault fault = text.fault();
        if (fault != null) {
            throw ShowFileException.at(file, fault.where(), fault.message());
        }
        List<Row> rows = new ArrayList<>();
        boolean first = true;
        for (List<CsvFields.Field> fields : CsvFields.of(file, text.text())) {
            boolean head = first
                    && fields.stream()
                            .map(f -> f.text().strip().toLowerCase(Locale.ROOT))
                            .toList()
                            .equals(HEAD);
            first = false;
            if (!head) {
                rows.add(row(file, fields));
            }
        }
        return List.copyOf(rows);
    }

    private static Row row(Path file, List<CsvFields.Field> fields) throws ShowFileException {
        CsvFields.Field seconds = fields.get(0);
        if (fields.size() == 1) {
            throw ShowFileException.at(
                    file,
                    seconds.where(),
                    "\"" + shortened(seconds.text()) + "\" stands alone; a line is seconds, a comma and the remark");
        }
        if (fields.size() > 2) {
            CsvFields.Field third = fields.get(2);
            throw ShowFileException.at(
                    file,
                    third.where(),
                    "\"" + shortened(third.text().strip())
                            + "\" is a third value; put the remark in double quotes if it has a comma in it");
        }
        CsvFields.Field text = fields.get(1);
        if (text.text().isBlank()) {
            throw ShowFileException.at(file, text.where(), "the remark is empty; write what was said");
        }
        return new Row(
                seconds(file, seconds), text.text().strip(), seconds.where().line());
    }

    private static double seconds(Path file, CsvFields.Field field) throws ShowFileException {
        String written = field.text().strip();
        // Not every text that Java takes for a number is one to a person: "1e3", "0x1p3", "NaN", "2f".
        if (written.matches("[0-9]{1,6}(\\.[0-9]{1,9})?") && Double.parseDouble(written) > 0) {
            return Double.parseDouble(written);
        }
        throw ShowFileException.at(
                file,
                field.where(),
                "\"" + shortened(written)
                        + "\" is not a time; it must be seconds above 0 with a full stop, such as 4.2");
    }

    private static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST_QUOTE
                ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE - 1)) + "…";
    }
}
