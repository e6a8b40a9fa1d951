package crowdline.console.prepare.cells;

import crowdline.console.prepare.page.PrepareHost;
import crowdline.edit.act.Edit;
import crowdline.exchange.ActRow;
import crowdline.exchange.RemarkRow;
import crowdline.exchange.RemarkTable;
import crowdline.exchange.RunningOrder;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/**
 * What cells of a spreadsheet are taken for.
 *
 * @param rows one line for each row
 * @param said what can be taken of them, or why nothing can; empty where there is nothing yet
 * @param edit takes them, or null if none can be taken
 */
record CellsView(List<String> rows, String said, @Nullable Edit edit) {
    private static final Path PASTED = Path.of("what was pasted");

    CellsView {
        rows = List.copyOf(rows);
    }

    /**
     * Remarks if there is a column of words, else acts.
     *
     * @param goesOn told how many acts were taken so far, off the event thread; false stops it
     */
    static CellsView of(String text, Show show, PrepareHost host, IntPredicate goesOn) {
        if (text.isBlank()) {
            return new CellsView(List.of(), "", null);
        }
        try {
            return RemarkTable.isOne(PASTED, text) ? remarks(text, show) : acts(text, show, host, goesOn);
        } catch (ShowFileException e) {
            return new CellsView(List.of(), String.valueOf(e.getMessage()), null);
        }
    }

    private static CellsView acts(String text, Show show, PrepareHost host, IntPredicate goesOn)
            throws ShowFileException {
        RunningOrder.Reading reading = RunningOrder.read(PASTED, text, show, host.kinds());
        return new CellsView(
                reading.rows().stream().map(CellsView::line).toList(),
                taken(reading.taken(), reading.rows().size(), "acts"),
                reading.taken() == 0 ? null : RunningOrder.take(reading, host.adding(), goesOn));
    }

    private static CellsView remarks(String text, Show show) throws ShowFileException {
        RemarkTable.Reading reading = RemarkTable.read(PASTED, text, show);
        return new CellsView(
                reading.rows().stream().map(CellsView::line).toList(),
                taken(reading.taken(), reading.rows().size(), "remarks"),
                reading.taken() == 0 ? null : RemarkTable.take(reading));
    }

    private static String taken(long taken, int all, String what) {
        return taken == 0
                ? "None of these rows can be taken; each says why."
                : taken + " of " + all + " rows can be taken as " + what + ". Undo takes all of them back.";
    }

    private static String line(ActRow row) {
        return (row.taken()
                        ? row.start() + "  " + row.title() + " ("
                                + row.kind().kind().name() + ")"
                        : "Left out: " + row.title())
                + said(row.said());
    }

    private static String line(RemarkRow row) {
        Remark remark = row.remark();
        return (remark == null
                        ? "Left out"
                        : remark.kind().name().toLowerCase(Locale.ROOT) + " in " + row.where() + ": " + remark.text())
                + said(row.said());
    }

    private static String said(List<String> said) {
        return said.isEmpty() ? "" : "  [" + String.join("; ", said) + "]";
    }
}
