package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.Terminal;
import crowdline.loaded.FlownCheck;
import crowdline.loaded.PilotLetter;
import crowdline.loaded.ShowLoader;
import crowdline.loaded.UntimedSpeakers;
import crowdline.show.Show;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.Severity;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.passes.PassesFile;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.ShowReading;
import crowdline.timing.Pass;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says everything there is to say about a show file. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks a show file and lists what is missing or wrong, with line and column.",
        footer = "Ends with 0 if there are no errors, 1 if there are, 2 if the file cannot be read.")
public final class CheckCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "SHOW", description = "The show file.")
    private @Nullable Path show;

    @Option(names = "--json", description = "Print the findings as JSON.")
    private boolean json;

    @Option(
            names = "--words",
            description =
                    "Also list what listeners might not follow in the remarks, and how easily each act reads. Hints"
                            + " only.")
    private boolean words;

    public CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        ShowReading reading = checked(Objects.requireNonNull(show));
        List<LocatedFinding> findings = new ArrayList<>(reading.findings());
        List<Pass> passes = passes(findings);
        Show read = reading.show();
        List<PilotLetter> asked =
                read == null || isTooLong(findings) ? List.of() : PilotLetter.of(read, CatalogueFile.shipped(), passes);
        if (json) {
            Map<String, Object> all = json(findings, read);
            all.put("questions", asked.stream().flatMap(l -> l.rows().stream()).toList());
            terminal.json(JsonOut.of(all));
        } else {
            findings.forEach(finding -> terminal.line(finding.asLine()));
            if (words && read != null) {
                RemarksCheck.of(read).lines().forEach(terminal::line);
            }
            terminal.line(summary(findings));
            PilotLetter.lines(asked).forEach(terminal::line);
        }
        return reading.blocked() ? ExitCode.BLOCKED : ExitCode.FINE;
    }

    /** The passes of the show; what cannot be used of them is said, with file, line and what it must be. */
    private List<Pass> passes(List<LocatedFinding> findings) {
        try {
            PassesFile.Reading timed =
                    new PassesFile(Objects.requireNonNull(show), Folders.here().passes()).read();
            timed.findings().forEach(said -> findings.add(ShowLoader.ofPasses(said)));
            return timed.passes();
        } catch (ShowFileException e) {
            findings.add(ShowLoader.ofPasses(String.valueOf(e.getMessage())));
            return List.of();
        }
    }

    private static boolean isTooLong(List<LocatedFinding> findings) {
        return findings.stream().anyMatch(f -> f.code().equals(FlownCheck.TOO_LONG));
    }

    private Map<String, Object> json(List<LocatedFinding> findings, @Nullable Show read) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("findings", findings);
        if (words && read != null) {
            RemarksCheck check = RemarksCheck.of(read);
            all.put("words", check.hints());
            all.put("reads", check.reads());
        }
        return all;
    }

    private static ShowReading checked(Path file) throws ShowFileException {
        ShowReading reading = new ShowFile().read(file);
        Show read = reading.show();
        return read == null
                ? reading
                : reading.with(FlownCheck.of(read, CatalogueFile.shipped()))
                        .with(UntimedSpeakers.of(read, new PaceOption().paces(Folders.here())));
    }

    private static String summary(List<LocatedFinding> findings) {
        return findings.isEmpty()
                ? "nothing found"
                : count(findings, Severity.ERROR, "error") + ", " + count(findings, Severity.WARNING, "warning") + ", "
                        + count(findings, Severity.NOTE, "note");
    }

    private static String count(List<LocatedFinding> findings, Severity severity, String word) {
        long count = findings.stream().filter(f -> f.severity() == severity).count();
        return count + " " + word + (count == 1 ? "" : "s");
    }
}
