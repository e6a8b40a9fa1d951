package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.act.FirstDraft;
import crowdline.exchange.ActRow;
import crowdline.exchange.RemarkRow;
import crowdline.exchange.RemarkTable;
import crowdline.exchange.RunningOrder;
import crowdline.exchange.TermTable;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Pace;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Gives the acts, remarks or own words of a show to a spreadsheet, or takes them from one. */
@Command(
        name = "table",
        mixinStandardHelpOptions = true,
        description = {
            "Gives the acts, the remarks or the own words of a show as comma-separated values that a spreadsheet opens.",
            "With --from it takes them: columns are told by their heads, the start, minutes, act, performer and aircraft of a"
                    + " running order also without. What was understood is printed, and written only with --into."
        },
        footer = "Ends with 0 if all went well, 1 if none of the rows can be taken, 2 if a file cannot be used.")
public final class TableCommand implements Callable<Integer> {
    private static final String STANDARD_INPUT = "-";
    private static final int MOST_BYTES = 1 << 22;

    private final Terminal terminal;
    private final InputStream in;

    /** What a row is about. */
    enum Of {
        acts,
        remarks,
        terms
    }

    @Parameters(index = "0", paramLabel = "SHOW.json", description = "The show.")
    private @Nullable Path file;

    @Parameters(index = "1", paramLabel = "acts|remarks|terms", description = "What a row is.")
    private Of of = Of.acts;

    @Option(
            names = "--from",
            paramLabel = "FILE.csv|-",
            description = "The table to take; - reads it from standard input.")
    private @Nullable String from;

    @Option(
            names = "--into",
            paramLabel = "SHOW.json",
            description = "Writes the show with the rows taken here; may be the show itself.")
    private @Nullable Path into;

    @Option(names = "--out", paramLabel = "FILE.csv", description = "Writes the table here instead of printing it.")
    private @Nullable Path out;

    public TableCommand(Terminal terminal, InputStream in) {
        this.terminal = terminal;
        this.in = in;
    }

    @Override
    public Integer call() throws ShowFileException {
        Path path = Objects.requireNonNull(file);
        Show show = new UsableShow(terminal).read(path);
        if (from == null && into != null) {
            throw new ShowFileException("--into writes what was taken; name the table with --from");
        }
        return from == null ? give(show) : take(path, show, from);
    }

    private int give(Show show) throws ShowFileException {
        String table = switch (of) {
            case acts -> RunningOrder.of(show);
            case remarks -> RemarkTable.of(show);
            case terms -> TermTable.of(show);
        };
        if (out == null) {
            terminal.out().print(table);
            terminal.out().flush();
        } else {
            // Spreadsheets take a file without this mark for one of an older encoding.
            new AtomicFile().write(out, ("\uFEFF" + table).getBytes(StandardCharsets.UTF_8));
            terminal.line("Written to " + out + ".");
        }
        return ExitCode.FINE;
    }

    private int take(Path path, Show show, String table) throws ShowFileException {
        Path name = Path.of(table.equals(STANDARD_INPUT) ? "standard input" : table);
        Edit edit = edit(show, name, text(table, name));
        try {
            Show taken = edit.of(show).show();
            if (into != null) {
                new WrittenShow(terminal).write(path, taken, into);
            }
            return ExitCode.FINE;
        } catch (CannotBe e) {
            terminal.complain(e.why());
            return ExitCode.BLOCKED;
        }
    }

    private Edit edit(Show show, Path name, String text) throws ShowFileException {
        if (of == Of.acts) {
            Catalogue catalogue = CatalogueFile.shipped();
            RunningOrder.Reading reading = RunningOrder.read(name, text, show, KindsFile.shipped());
            reading.rows().forEach(row -> terminal.line(line(row)));
            terminal.line(reading.taken() + " of " + reading.rows().size() + " rows can be taken.");
            return RunningOrder.take(reading, new AddAct(catalogue, new FirstDraft(catalogue, Pace.DEFAULT, 0)));
        }
        if (of == Of.terms) {
            TermTable.Reading reading = TermTable.read(name, text, show);
            reading.rows().forEach(row -> terminal.line(line(row)));
            terminal.line(reading.taken() + " of " + reading.rows().size() + " rows can be taken.");
            return TermTable.take(reading);
        }
        RemarkTable.Reading reading = RemarkTable.read(name, text, show);
        reading.rows().forEach(row -> terminal.line(line(row)));
        terminal.line(reading.taken() + " of " + reading.rows().size() + " rows can be taken.");
        return RemarkTable.take(reading);
    }

    private static String line(ActRow row) {
        String act = row.taken()
                ? String.format(
                        Locale.UK,
                        "%s  %5.1f min  %s (%s%s)",
                        row.start(),
                        row.minutes(),
                        row.title(),
                        row.kind().kind().name(),
                        row.performer().isEmpty() ? "" : ", " + row.performer())
                : "not taken" + (row.title().isEmpty() ? "" : ": " + row.title());
        return "line " + row.line() + ": " + act + said(row.said());
    }

    private static String line(RemarkRow row) {
        var remark = row.remark();
        String what = remark == null
                ? "not taken"
                : (row.known() ? "changes " : "") + remark.kind().name().toLowerCase(Locale.ROOT) + " in " + row.where()
                        + ": " + remark.text();
        return "line " + row.line() + ": " + what + said(row.said());
    }

    private static String line(TermTable.Row row) {
        Term term = row.term();
        return "line " + row.line() + ": "
                + (term == null
                        ? "not taken\n    " + row.said()
                        : (row.known() ? "changes " : "") + term.name() + ": " + term.whatItIs());
    }

    private static String said(List<String> said) {
        return said.isEmpty() ? "" : "\n    " + String.join("\n    ", said);
    }

    private String text(String table, Path name) throws ShowFileException {
        ShowText text;
        if (table.equals(STANDARD_INPUT)) {
            try {
                byte[] bytes = in.readNBytes(MOST_BYTES + 1);
                if (bytes.length > MOST_BYTES) {
                    throw new ShowFileException(
                            "standard input is longer than any running order; name the right table");
                }
                text = ShowText.decode(bytes);
            } catch (ShowFileException e) {
                throw e;
            } catch (IOException e) {
                throw new ShowFileException("standard input cannot be read; name a file", e);
            }
        } else {
            text = ShowText.decode(ShowText.bytes(name));
        }
        ShowText.Fault fault = text.fault();
        if (fault != null) {
            throw ShowFileException.at(name, fault.where(), fault.message());
        }
        return text.text();
    }
}
