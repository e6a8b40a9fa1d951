package crowdline.exchange;

import crowdline.edit.Change;
import crowdline.edit.act.Edit;
import crowdline.edit.day.OwnGlossary;
import crowdline.sheet.CsvCell;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.bounds.Written;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A show's own words as rows of cells, given to a spreadsheet and taken back. */
public final class TermTable {
    private static final String HEAD = "word,also called,group,what it is,at the show,say it,see also,source";

    private static final Map<Column, List<String>> HEADS = Map.of(
            Column.WORD, List.of("word", "term", "name", "expression"),
            Column.ALSO, List.of("also called", "aliases", "other names", "synonyms"),
            Column.GROUP, List.of("group", "category", "subject"),
            Column.WHAT, List.of("what it is", "meaning", "explanation", "definition", "description"),
            Column.SHOW, List.of("at the show", "look for", "note"),
            Column.SAY, List.of("say it", "how to say", "pronunciation"),
            Column.SEE, List.of("see also", "see"),
            Column.SOURCE, List.of("source", "reference"));

    private enum Column {
        WORD,
        ALSO,
        GROUP,
        WHAT,
        SHOW,
        SAY,
        SEE,
        SOURCE
    }

    private TermTable() {}

    /**
     * A row, as it was understood.
     *
     * @param line in the table, from 1
     * @param term the word, or null if it cannot be taken
     * @param known whether the show explains it already, and would explain it so from then on
     * @param said why it cannot be taken; empty if it can
     */
    public record Row(int line, @Nullable Term term, boolean known, String said) {}

    /**
     * What was understood, for a person to look at before it is taken.
     *
     * @param rows every row below the heads
     */
    public record Reading(List<Row> rows) {
        public Reading {
            rows = List.copyOf(rows);
        }

        public long taken() {
            return rows.stream().filter(row -> row.term() != null).count();
        }
    }

    /**
     * Reads cells under heads, of which two must be the word and what it is.
     *
     * @param name of the file, or what to call it
     * @throws ShowFileException if it is no table, or none of words
     */
    public static Reading read(Path name, String text, Show show) throws ShowFileException {
        List<Cells.Row> rows = Cells.of(name, text);
        Heads<Column> heads = Heads.in(rows, HEADS)
                .filter(h -> h.has(Column.WORD) && h.has(Column.WHAT))
                .orElseThrow(() -> new ShowFileException(name
                        + ": no columns of words and what they mean were recognised; put headings over the columns,"
                        + " such as"
                        + " word, what it is"));
        List<Row> read = new ArrayList<>();
        for (Cells.Row row : rows.subList(heads.rows(), rows.size())) {
            read.add(row(row, heads, show));
        }
        if (read.isEmpty()) {
            throw Text.noRows(name);
        }
        return new Reading(read);
    }

    private static Row row(Cells.Row row, Heads<Column> heads, Show show) {
        String word = row.text(heads.of(Column.WORD));
        try {
            String group = row.text(heads.of(Column.GROUP));
            String source = row.text(heads.of(Column.SOURCE));
            Term term = new Term(
                    word,
                    list(row.text(heads.of(Column.ALSO))),
                    group.isEmpty() ? Term.OWN_GROUP : group,
                    row.text(heads.of(Column.WHAT)),
                    row.text(heads.of(Column.SHOW)),
                    row.text(heads.of(Column.SAY)),
                    list(row.text(heads.of(Column.SEE))),
                    source.isEmpty() ? null : source);
            boolean known =
                    show.terms().stream().anyMatch(t -> Written.key(t.name()).equals(Written.key(word)));
            return new Row(row.line(), term, known, "");
        } catch (IllegalArgumentException e) {
            return new Row(row.line(), null, false, String.valueOf(e.getMessage()));
        }
    }

    private static List<String> list(String cell) {
        return Arrays.stream(cell.split("[;|]", -1))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .toList();
    }

    /** The words of the rows that are taken, as one change; those the show has are explained anew. */
    public static Edit take(Reading reading) {
        Edit edit = show -> {
            Show now = show;
            int number = 0;
            for (Row row : reading.rows()) {
                Term term = row.term();
                if (term != null) {
                    now = OwnGlossary.term(term.name(), term).of(now).show();
                    number++;
                }
            }
            if (number == 0) {
                throw Text.noneTaken();
            }
            return Change.of("Take " + (number == 1 ? "1 word" : number + " words") + " from cells", now);
        };
        return edit.refusing();
    }

    /** Every own word as comma-separated values that a spreadsheet opens and {@link #read} takes. */
    public static String of(Show show) {
        StringBuilder text = new StringBuilder(HEAD).append("\r\n");
        for (Term term : show.terms()) {
            text.append(Stream.of(
                                    term.name(),
                                    String.join("; ", term.aliases()),
                                    term.group(),
                                    term.whatItIs(),
                                    term.atTheShow(),
                                    term.sayIt(),
                                    String.join("; ", term.see()),
                                    Objects.requireNonNullElse(term.source(), ""))
                            .map(CsvCell::quoted)
                            .reduce((a, b) -> a + ',' + b)
                            .orElseThrow())
                    .append("\r\n");
        }
        return text.toString();
    }
}
