package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Exports;
import crowdline.app.shell.Folders;
import crowdline.app.shell.MonotonicTicker;
import crowdline.app.shell.Terminal;
import crowdline.flight.Workers;
import crowdline.live.debrief.Debrief;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.sheet.DebriefSheet;
import crowdline.show.Show;
import crowdline.speech.pace.Pace;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalReading;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.json.JsonOut;
import crowdline.storage.settings.SettingsFile;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what was flown and marked in a show, from the journal in which an act was flown last. */
@Command(
        name = "debrief",
        mixinStandardHelpOptions = true,
        description =
                "Compares what was flown and marked with what was planned, from the journal of a show's latest act.",
        footer = "Ends with 0, or 2 if there is no such show or no journal of it.")
public final class DebriefCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Folders folders;

    @Parameters(paramLabel = "SHOW", arity = "0..1", description = "The show file; the one opened last if left out.")
    private @Nullable Path show;

    @Option(names = "--json", description = "Print as JSON.")
    private boolean json;

    @Option(names = "--table", paramLabel = "FILE.csv", description = "Write the figures as comma-separated values.")
    private @Nullable Path table;

    public DebriefCommand(Terminal terminal, Folders folders) {
        this.terminal = terminal;
        this.folders = folders;
    }

    @Override
    public Integer call() throws IOException {
        Path file = show != null ? show : lastOpened();
        if (file == null) {
            terminal.complain("no show has been opened yet; name one: crowdline debrief SHOW.json");
            return ExitCode.UNUSABLE;
        }
        LoadedShow loaded = new UsableShow(terminal)
                .load(
                        file,
                        new ShowLoader(CatalogueFile::shipped, () -> Pace.DEFAULT, folders.passes(), Workers.ALONE),
                        LoadedShow.FIRST_FLIGHTS);
        JournalShelf shelf = new JournalShelf(folders.journals(), JournalMachine.here(new MonotonicTicker()), 0);
        Optional<JournalReading> reading = shelf.last(JournalShow.of(file, ShowFile.bytes(file)));
        if (reading.isEmpty()) {
            terminal.complain("there is no journal of " + file + " in " + folders.journals()
                    + "; run the show in Live first, or name the file it was run from");
            return ExitCode.UNUSABLE;
        }
        print(loaded, reading.get());
        return ExitCode.FINE;
    }

    private @Nullable Path lastOpened() {
        return new SettingsFile(folders.settings())
                .read().settings().recentFiles().stream().findFirst().orElse(null);
    }

    private void print(LoadedShow loaded, JournalReading reading) throws ShowFileException {
        Show read = loaded.show();
        Debrief debrief =
                Debrief.of(read, reading.state(), loaded.debriefSources(reading.zero(), (actId, variant) -> List.of()));
        Path to = table;
        if (to != null) {
            Exports.write(to, DebriefSheet.table(debrief));
        }
        if (json) {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("journal", reading.path().toString());
            all.put("sessionZero", reading.zero().toString());
            all.put("damagedLines", reading.damagedLines());
            all.put("debrief", debrief);
            terminal.json(JsonOut.of(all));
            return;
        }
        if (reading.damagedLines() > 0) {
            terminal.line("Lines of the journal that could not be read and were left out: " + reading.damagedLines());
        }
        DoubleFunction<LocalTime> hour = atS -> LocalTime.ofInstant(
                reading.zero().plusNanos(Math.round(atS * 1e9)), read.venue().timeZone());
        DebriefSheet.lines(debrief, hour).forEach(terminal::line);
    }
}
