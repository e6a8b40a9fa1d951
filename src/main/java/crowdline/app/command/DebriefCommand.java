package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Exports;
import crowdline.app.shell.Folders;
import crowdline.app.shell.Terminal;
import crowdline.flight.Workers;
import crowdline.live.debrief.Debrief;
import crowdline.loaded.FlownDay;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.sheet.DebriefSheet;
import crowdline.sheet.DebriefTable;
import crowdline.sheet.day.DayBeside;
import crowdline.sheet.day.DaySheet;
import crowdline.sheet.day.DayValues;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalReading;
import crowdline.storage.json.JsonOut;
import crowdline.storage.settings.SettingsFile;
import crowdline.storage.show.CatalogueFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
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

    @Option(
            names = "--day",
            paramLabel = "FILE.csv",
            description = "Write the day, its acts, duties and talk, as comma-separated values.")
    private @Nullable Path day;

    @Option(
            names = "--beside",
            paramLabel = "JOURNAL",
            description = "Set another day beside it, such as last year's, from its journal.")
    private @Nullable Path beside;

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
                        new ShowLoader(CatalogueFile::shipped, () -> Paces.DEFAULT, folders.passes(), Workers.ALONE),
                        LoadedShow.FIRST_FLIGHTS);
        Optional<FlownDay> flown = LastFlown.of(file, loaded, folders);
        if (flown.isEmpty()) {
            terminal.complain(LastFlown.none(file, folders));
            return ExitCode.UNUSABLE;
        }
        Path otherDay = beside;
        try {
            FlownDay other = otherDay == null ? null : LastFlown.in(otherDay, loaded, folders);
            print(flown.get(), other);
            return ExitCode.FINE;
        } catch (ShowFileException e) {
            terminal.complain(String.valueOf(e.getMessage()));
            return ExitCode.UNUSABLE;
        }
    }

    private @Nullable Path lastOpened() {
        return new SettingsFile(folders.settings())
                .read().settings().recentFiles().stream().findFirst().orElse(null);
    }

    private void print(FlownDay flown, @Nullable FlownDay other) throws ShowFileException {
        JournalReading reading = flown.reading();
        Debrief debrief = flown.debrief();
        Path to = table;
        if (to != null) {
            Exports.write(to, DebriefTable.lines(debrief));
        }
        Path dayTo = day;
        if (dayTo != null) {
            Exports.write(dayTo, DaySheet.table(debrief, flown::hour, other == null ? null : other.beside()));
        }
        if (json) {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("journal", reading.path().toString());
            all.put("sessionZero", reading.zero().toString());
            all.put("damagedLines", reading.damagedLines());
            all.put("debrief", debrief);
            if (other != null) {
                all.put("beside", DayValues.of(other.beside()));
            }
            terminal.json(JsonOut.of(all));
            return;
        }
        if (other != null) {
            DayBeside.lines(debrief.day(), flown::hour, other.debrief().day(), other::hour)
                    .forEach(terminal::line);
            other.beside().lacks().forEach(terminal::line);
            return;
        }
        if (reading.damagedLines() > 0) {
            terminal.line("Lines of the journal that could not be read and were left out: " + reading.damagedLines());
        }
        DebriefSheet.lines(debrief, flown::hour).forEach(terminal::line);
    }
}
