package crowdline.storage.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Comma-separated text as fields with their places, by RFC 4180; a line may also end in LF alone. */
public final class CsvFields {
    private final Path file;
    private final String text;
    private final char separator;
    private final int mostInALine;
    private final List<List<Field>> rows = new ArrayList<>();
    private List<Field> row = new ArrayList<>();
    private int at;
    private int line = 1;
    private int lineStart;

    /** One field and where it begins. */
    public record Field(String text, Where where) {}

    private CsvFields(Path file, String text, char separator, int mostInALine) {
        this.file = file;
        this.text = text;
        this.separator = separator;
        this.mostInALine = mostInALine;
    }

    /**
     * The rows that are not blank, each with at least one field.
     *
     * @throws ShowFileException if it is no such text, with line and column, or larger than {@link LineLimits}
     */
    public static List<List<Field>> of(Path file, String text) throws ShowFileException {
        return of(file, text, ',', LineLimits.VALUES_IN_A_LINE);
    }

    /**
     * The same of text with something else between its fields.
     *
     * @param mostInALine more fields than this in a line are refused
     */
    public static List<List<Field>> of(Path file, String text, char separator, int mostInALine)
            throws ShowFileException {
        CsvFields fields = new CsvFields(file, text, separator, mostInALine);
        while (fields.at < text.length()) {
            fields.field();
        }
        fields.endRow();
        return fields.rows;
    }

    private void field() throws ShowFileException {
        Where where = here();
        int quote = at;
        while (quote < text.length() && text.charAt(quote) == ' ') {
            quote++;
        }
        boolean quoted = quote < text.length() && text.charAt(quote) == '"';
        String value;
        if (quoted) {
            at = quote;
            value = quoted(here());
        } else {
            value = plain();
        }
        if (LineLimits.isTooLong(value)) {
            throw ShowFileException.at(file, where, LineLimits.tooLong(value));
        }
        if (row.size() == mostInALine) {
            throw ShowFileException.at(file, where, LineLimits.tooManyValues(mostInALine));
        }
        row.add(new Field(value, where));
        if (at < text.length() && text.charAt(at) == separator) {
            at++;
            if (at == text.length()) {
                row.add(new Field("", here()));
            }
        } else {
            endLine();
        }
    }

    private String plain() {
        int from = at;
        while (at < text.length() && !isEnd(text.charAt(at))) {
            at++;
        }
        return text.substring(from, at);
    }

    private boolean isEnd(char c) {
        return c == separator || c == '\r' || c == '\n';
    }

    private String quoted(Where opening) throws ShowFileException {
        StringBuilder value = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"') {
                value.append('"');
                at += 2;
            } else if (c == '"') {
                at++;
                String after = plain().strip();
                if (!after.isEmpty()) {
                    throw ShowFileException.at(
                            file,
                            here(),
                            "there is more after the closing quote; write a quote inside a remark twice (\"\")");
                }
                return value.toString();
            } else {
                value.append(c);
                at++;
                if (c == '\n') {
                    line++;
                    lineStart = at;
                }
            }
        }
        throw ShowFileException.at(file, opening, "the quote that opens here is never closed; close it with \"");
    }

    private void endLine() throws ShowFileException {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
        }
        line++;
        lineStart = at;
        endRow();
    }

    private void endRow() throws ShowFileException {
        if (row.size() > 1 || row.stream().anyMatch(f -> !f.text().isBlank())) {
            if (rows.size() == LineLimits.LINES) {
                throw ShowFileException.at(file, row.get(0).where(), LineLimits.tooManyLines(LineLimits.LINES));
            }
            rows.add(List.copyOf(row));
        }
        row = new ArrayList<>();
    }

    private Where here() {
        return new Where(line, at - lineStart + 1);
    }
}
