package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.glossary.Explained;
import crowdline.glossary.Glossary;
import crowdline.paper.Paper;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.PagePdf;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.bounds.Nearest;
import crowdline.show.catalogue.Catalogue;
import crowdline.sight.FigureAlone;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.page.GlossaryPage;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.GlossaryJson;
import crowdline.storage.show.KindsFile;
import crowdline.storage.show.TermsFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Explains figures and words. */
@Command(
        name = "glossary",
        mixinStandardHelpOptions = true,
        description = {
            "Explains a figure or a word of the trade, or lists everything that is explained.",
            "A misspelt word is searched for as well as it can be."
        },
        footer = "Ends with 0 if something was found, 1 if nothing was, 2 if a file or an option cannot be used.")
public final class GlossaryCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(
            paramLabel = "TERM",
            arity = "0..*",
            description = "The figure or the word, by any of its names. Several words are one name.")
    private List<String> term = List.of();

    @Option(
            names = "--search",
            paramLabel = "TEXT",
            description = "Finds every page that has these words anywhere, the best first; spelling is forgiven.")
    private @Nullable String search;

    @Option(
            names = "--show",
            paramLabel = "SHOW.json",
            description = "Takes this show's own figures and words too, before those of the program.")
    private @Nullable Path show;

    @Option(names = "--json", description = "Print as JSON, with figures and terms apart.")
    private boolean json;

    @Option(
            names = "--html",
            paramLabel = "FILE.html",
            description = "Write what was found as one page for a browser, its figures moving; it needs no network.")
    private @Nullable Path html;

    @Option(names = "--pdf", paramLabel = "FILE.pdf", description = "Write what was found as pages to print.")
    private @Nullable Path pdf;

    @Option(
            names = "--merge",
            paramLabel = "OTHER.json",
            description =
                    "Compares the own words of --show with those of another show, or with what --json printed; with --into they are taken.")
    private @Nullable Path merge;

    @Option(names = "--into", paramLabel = "SHOW.json", description = "Writes the show with the merged words here.")
    private @Nullable Path into;

    @Option(names = "--theirs", description = "Where both shows explain something, take the other's words.")
    private boolean theirs;

    @Option(
            names = "--aircraft",
            paramLabel = "KIND",
            description =
                    "Fly the figures of the page for a browser with this kind; a strong aerobatic monoplane if left out.")
    private String aircraft = "strong aerobatic monoplane";

    public GlossaryCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        String asked = String.join(" ", term).strip();
        if (!asked.isEmpty() && search != null) {
            terminal.complain("a term and --search are two questions; ask one of them");
            return ExitCode.UNUSABLE;
        } else if (search != null && search.isBlank()) {
            terminal.complain("--search has no words; write what to look for, such as --search rudder");
            return ExitCode.UNUSABLE;
        }
        if (merge != null || into != null) {
            return new GlossaryMerging(terminal).merge(show, merge, into, theirs);
        }
        Kind kind = KindsFile.shipped().find(aircraft).filter(Kind::flies).orElse(null);
        if (kind == null) {
            terminal.complain(noKind(aircraft));
            return ExitCode.UNUSABLE;
        }
        String refusal = html != null ? NewFile.refusal("--html", html, ".html") : null;
        if (refusal == null && pdf != null) {
            refusal = NewFile.refusal("--pdf", pdf, ".pdf");
        }
        if (refusal != null) {
            terminal.complain(refusal);
            return ExitCode.UNUSABLE;
        }
        Catalogue catalogue = CatalogueFile.shipped();
        List<Term> own = List.of();
        String title = "Figures and words";
        if (show != null) {
            Show read = new UsableShow(terminal).read(show);
            catalogue = catalogue.with(read.figures());
            own = read.terms();
            title = read.title() + ": figures and words";
        }
        Glossary glossary = Glossary.of(catalogue, TermsFile.shipped(), own);
        List<Explained> found = found(glossary, asked);
        if (json) {
            terminal.json(GlossaryJson.of(
                    found.stream()
                            .filter(Explained.OfFigure.class::isInstance)
                            .map(item -> ((Explained.OfFigure) item).entry())
                            .toList(),
                    found.stream()
                            .filter(Explained.OfTerm.class::isInstance)
                            .map(item -> ((Explained.OfTerm) item).term())
                            .toList()));
        }
        if (found.isEmpty()) {
            terminal.complain(nothing(glossary, asked));
            return ExitCode.BLOCKED;
        }
        if (html != null) {
            write(html, page(title, found, catalogue, kind).getBytes(StandardCharsets.UTF_8), found.size());
        }
        if (pdf != null) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            PagePdf.write(Paper.glossary(title, found, catalogue, false), bytes, Counting.UNHEARD);
            write(pdf, bytes.toByteArray(), found.size());
        }
        if (!json && html == null && pdf == null) {
            if (!asked.isEmpty()) {
                found.forEach(item -> page(glossary, item));
            } else {
                list(found);
            }
        }
        return ExitCode.FINE;
    }

    private static String noKind(String aircraft) {
        return KindsFile.shipped()
                .find(aircraft)
                .map(timed -> "figures cannot be flown with a " + timed.name() + ", which is only timed; choose one of "
                        + flying())
                .orElseGet(() -> KindsFile.shipped().unknown(aircraft));
    }

    private static String flying() {
        return KindsFile.shipped().all().stream()
                .filter(Kind::flies)
                .map(Kind::name)
                .collect(Collectors.joining(", "));
    }

    private static String page(String title, List<Explained> found, Catalogue catalogue, Kind kind) {
        FigureAlone alone = new FigureAlone(catalogue, kind.airframe("m", kind.name(), Sliders.TYPICAL));
        return GlossaryPage.of(
                title, found, item -> drawn(item, alone), alone.airframe().outline());
    }

    private static GlossaryPage.Drawn drawn(Explained item, FigureAlone alone) {
        Flown flown = item instanceof Explained.OfFigure figure
                ? alone.fly(figure.entry()).flown()
                : Flown.NONE;
        return new GlossaryPage.Drawn(
                flown, flown.isEmpty() ? 0 : Eye.before(flown).crowdM());
    }

    private void write(Path to, byte[] bytes, int pages) throws IOException {
        new AtomicFile().write(to, bytes);
        terminal.line(pages + (pages == 1 ? " page" : " pages") + " of the glossary, in " + to);
    }

    private List<Explained> found(Glossary glossary, String asked) {
        if (search != null) {
            return glossary.search(search);
        }
        return asked.isEmpty()
                ? glossary.items()
                : glossary.find(asked).map(List::of).orElse(List.of());
    }

    private String nothing(Glossary glossary, String asked) {
        if (search != null) {
            return "nothing in the glossary has \"" + search + "\" in it; try fewer words, or one of its letters fewer";
        }
        return "nothing in the glossary is called \"" + asked + "\""
                + Nearest.to(asked, glossary.names())
                        .map(name -> "; did you mean \"" + name + "\"?")
                        .orElse("; --search \"" + asked + "\" looks into the texts too");
    }

    private void list(List<Explained> found) {
        int widest = found.stream().mapToInt(item -> item.name().length()).max().orElse(0);
        for (Explained item : found) {
            terminal.line(item.name()
                    + " ".repeat(widest - item.name().length() + 2)
                    + item.texts().get(0));
        }
    }

    private void page(Glossary glossary, Explained item) {
        terminal.line(item.name() + " (" + item.group() + ")");
        if (!item.aliases().isEmpty()) {
            terminal.line("also: " + String.join(", ", item.aliases()));
        }
        item.sections().forEach(section -> section(section.title(), section.text()));
        section(Explained.SAY_IT, item.sayIt());
        section(Explained.SOURCE, item.source());
        section(
                "See also",
                glossary.mentionedIn(item).stream().map(Explained::name).collect(Collectors.joining(", ")));
    }

    private void section(String title, String text) {
        if (!text.isBlank()) {
            terminal.line("");
            terminal.line(title + ":");
            terminal.line("  " + text);
        }
    }
}
