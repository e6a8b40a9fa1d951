package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.glossary.Explained;
import crowdline.glossary.Glossary;
import crowdline.show.Show;
import crowdline.show.bounds.Nearest;
import crowdline.show.catalogue.Catalogue;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.GlossaryJson;
import crowdline.storage.show.TermsFile;
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

    public GlossaryCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        String asked = String.join(" ", term).strip();
        if (!asked.isEmpty() && search != null) {
            terminal.complain("a term and --search are two questions; ask one of them");
            return ExitCode.UNUSABLE;
        } else if (search != null && search.isBlank()) {
            terminal.complain("--search has no words; write what to look for, such as --search rudder");
            return ExitCode.UNUSABLE;
        }
        Glossary glossary = glossary();
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
        if (!json) {
            if (!asked.isEmpty()) {
                found.forEach(item -> page(glossary, item));
            } else {
                list(found);
            }
        }
        return ExitCode.FINE;
    }

    private Glossary glossary() throws ShowFileException {
        Catalogue catalogue = CatalogueFile.shipped();
        if (show == null) {
            return Glossary.of(catalogue, TermsFile.shipped(), List.of());
        }
        Show read = new UsableShow(terminal).read(show);
        return Glossary.of(catalogue.with(read.figures()), TermsFile.shipped(), read.terms());
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
