package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.Terminal;
import crowdline.flight.Workers;
import crowdline.loaded.FlownDay;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.measure.Measures;
import crowdline.paper.NothingOnPaper;
import crowdline.paper.Paper;
import crowdline.paper.SheetKind;
import crowdline.paper.Wanted;
import crowdline.sheet.day.OtherDay;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.PagePdf;
import crowdline.sheet.page.Pages;
import crowdline.show.Act;
import crowdline.show.bounds.Nearest;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.show.CatalogueFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes what is taken along on paper as a PDF. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        description = "Writes cue cards, a running sheet and other paper as a PDF.",
        footer = {
            "Ends with 0 if it was written, 1 if there is nothing to write, 2 if the show cannot be used or the file",
            "cannot be written."
        })
public final class SheetCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Workers workers;
    private final Folders folders;

    @Parameters(paramLabel = "SHOW", description = "The show file.")
    private @Nullable Path show;

    @Option(
            names = "--kind",
            required = true,
            paramLabel = "KIND",
            description = "cards, running, pilot, questions, glossary, incident or debrief.")
    private String kind = "";

    @Option(names = "--out", required = true, paramLabel = "FILE.pdf", description = "The file to write.")
    private @Nullable Path out;

    @Mixin
    private final ActChoice choice = new ActChoice();

    @Option(names = "--large", description = "Large type throughout.")
    private boolean large;

    @Option(
            names = "--beside",
            paramLabel = "JOURNAL",
            description = "Set another day beside a debrief, such as last year's, from its journal.")
    private @Nullable Path beside;

    @Mixin
    private final UnitsOption units = new UnitsOption();

    @Mixin
    private final PaceOption pace = new PaceOption();

    public SheetCommand(Terminal terminal, Folders folders, Workers workers) {
        this.terminal = terminal;
        this.folders = folders;
        this.workers = workers;
    }

    @Override
    public Integer call() throws IOException {
        SheetKind known = SheetKind.of(kind).orElse(null);
        if (known == null) {
            List<String> words =
                    Arrays.stream(SheetKind.values()).map(SheetKind::word).toList();
            terminal.complain("there is no paper of the kind " + kind + "; there are " + String.join(", ", words)
                    + Nearest.hint(kind, words));
            return ExitCode.UNUSABLE;
        }
        Path to = Objects.requireNonNull(out);
        String refusal = NewFile.refusal("--out", to, ".pdf");
        if (refusal != null) {
            terminal.complain(refusal);
            return ExitCode.UNUSABLE;
        }
        Measures measures = units.measures(folders);
        Path file = Objects.requireNonNull(show);
        Paces paces = pace.paces(folders);
        LoadedShow loaded = new UsableShow(terminal)
                .load(
                        file,
                        new ShowLoader(CatalogueFile::shipped, () -> paces, folders.passes(), workers),
                        LoadedShow.FLIGHTS);
        List<Act> acts = choice.of(loaded.show());
        FlownDay flown =
                known == SheetKind.DEBRIEF ? LastFlown.of(file, loaded, folders).orElse(null) : null;
        if (known != SheetKind.DEBRIEF && beside != null) {
            terminal.complain("--beside sets another day beside a debrief; leave it out, or give --kind debrief");
            return ExitCode.UNUSABLE;
        }
        if (known == SheetKind.DEBRIEF && flown == null) {
            terminal.complain(LastFlown.none(file, folders));
            return ExitCode.UNUSABLE;
        }
        Path otherDay = beside;
        OtherDay other = flown == null || otherDay == null
                ? null
                : LastFlown.in(otherDay, loaded, folders).beside();
        Pages pages;
        try {
            Wanted wanted = new Wanted(
                    loaded,
                    acts,
                    choice::variant,
                    choice.named(),
                    large,
                    flown == null ? null : new Wanted.Flown(flown.debrief(), flown::hour, other),
                    measures);
            pages = Paper.of(known, wanted, Counting.UNHEARD);
        } catch (NothingOnPaper e) {
            terminal.complain(String.valueOf(e.getMessage()));
            return ExitCode.BLOCKED;
        }
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        PagePdf.write(pages, pdf, Counting.UNHEARD);
        new AtomicFile().write(to, pdf.toByteArray());
        pages.lacking().ifPresent(lacking -> terminal.line("Warning: " + lacking + "."));
        int count = pages.pages().size();
        terminal.line(known.title() + ", " + count + (count == 1 ? " page" : " pages") + ", in " + to);
        return ExitCode.FINE;
    }
}
