package crowdline.app.command;

import crowdline.app.shell.Folders;
import crowdline.app.shell.Terminal;
import crowdline.flight.Workers;
import crowdline.loaded.ActOrigins;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Measures;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.Planner;
import crowdline.sheet.Columns;
import crowdline.sheet.RunningSheet;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.timing.ActTimes;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints the timed running sheet of a show with what to say when. */
final class SheetPrinter {
    private final Terminal terminal;
    private final Workers workers;
    private final Folders folders;

    SheetPrinter(Terminal terminal, Folders folders, Workers workers) {
        this.workers = workers;
        this.terminal = terminal;
        this.folders = folders;
    }

    /** @param paces of those whose remarks they are */
    void print(Path file, Paces paces) throws ShowFileException {
        LoadedShow loaded = new UsableShow(terminal)
                .load(
                        file,
                        new ShowLoader(CatalogueFile::shipped, () -> paces, folders.passes(), workers),
                        LoadedShow.FLIGHTS);
        Show show = loaded.show();
        terminal.line(show.title() + ", " + show.venue().name() + ", " + show.date());
        terminal.line(PaceOption.sentence(paces.own()));
        terminal.line("");
        for (Act act : show.acts()) {
            loaded.prediction(act.id(), act.variants().get(0).name()).ifPresent(p -> {
                Plan plan = new Planner().plan(loaded.planAhead().wholeAct(act, p.times()));
                RunningSheet.lines(
                                show,
                                act,
                                p.flight(),
                                p.bands(),
                                loaded.drifts(act, p.flight()),
                                p.learned(),
                                notes(loaded.words(), p.times(), plan),
                                Measures.USUAL)
                        .forEach(terminal::line);
                ActOrigins.of(show, act, p.flight(), loaded.catalogue().with(show.figures()), loaded.passes())
                        .sentence()
                        .ifPresent(said -> Columns.wrapped(said, Columns.MOST).forEach(terminal::line));
                terminal.line("");
                unplaced(plan).forEach(terminal::line);
            });
        }
    }

    private static List<List<String>> notes(ShowLookup words, ActTimes times, Plan plan) {
        List<List<String>> notes = new ArrayList<>();
        for (int i = 0; i < times.figures().size(); i++) {
            double from =
                    i == 0 ? Double.NEGATIVE_INFINITY : times.figures().get(i).startS();
            double to =
                    i + 1 < times.figures().size() ? times.figures().get(i + 1).startS() : Double.POSITIVE_INFINITY;
            List<String> own = new ArrayList<>();
            for (Placed placed : plan.placed()) {
                Remark remark = words.remark(placed.remarkId()).orElse(null);
                if (remark != null && placed.startS() >= from && placed.startS() < to) {
                    own.addAll(note(placed, remark, words));
                }
            }
            notes.add(own);
        }
        return notes;
    }

    /** What found no place, and why, so that nothing is lost in silence. */
    private static List<String> unplaced(Plan plan) {
        List<String> lines = new ArrayList<>();
        if (!plan.unplaced().isEmpty()) {
            lines.add("Not placed:");
            plan.unplaced().forEach(u -> lines.addAll(Columns.hanging("  " + u.remarkId() + ": ", 4, u.reason())));
            lines.add("");
        }
        return lines;
    }

    private static List<String> note(Placed placed, Remark remark, ShowLookup words) {
        String text = remark.words(placed.form() == RemarkForm.SHORT);
        String start = (placed.startS() < 0 ? "-" : "") + RunningSheet.minutes(Math.abs(placed.startS()));
        String head = String.format(
                Locale.UK,
                "%6s    %s%s, %.0f s%s: ",
                start,
                placed.kind().name().toLowerCase(Locale.ROOT),
                remark.isTied() ? " " + remark.tie() : "",
                placed.endS() - placed.startS(),
                words.other(remark).map(name -> ", " + name).orElse("")
                        + (placed.tight() ? ", just fits" : "")
                        + (remark.draft() ? ", draft" : ""));
        return Columns.hanging(head, 12, text);
    }
}
