package crowdline.app.command;

import crowdline.app.shell.Complaints;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.flight.Workers;
import crowdline.follow.FollowPlan;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.LogPasses;
import crowdline.loaded.PassAdding;
import crowdline.loaded.PassIds;
import crowdline.loaded.Prediction;
import crowdline.loaded.ShowLoader;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.bounds.Nearest;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.passes.PassesFile;
import crowdline.storage.show.CatalogueFile;
import crowdline.timing.Pass;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what was learned from timed passes, adds one, and says which count. */
@Command(
        name = "learn",
        mixinStandardHelpOptions = true,
        description = "Compares the passes that were timed with the prediction, and adds passes.",
        footer = {
            "Passes are kept beside the show file, in SHOW.passes; lines are only ever added to it.",
            "Ends with 0 if all went well, 2 if a file cannot be used."
        })
public final class LearnCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Workers workers;
    private final Path otherPasses;
    private final PassIds ids;

    @Parameters(index = "0", paramLabel = "SHOW", description = "The show file.")
    private @Nullable Path file;

    @Parameters(
            index = "1..*",
            paramLabel = "LOG",
            description =
                    "Adds a pass from each flight log (NMEA 0183, IGC or GPX), in which the act is followed; needs"
                            + " --act.")
    private List<Path> logs = List.of();

    @Mixin
    private final ActChoice choice = new ActChoice();

    @ArgGroup
    private @Nullable Change change;

    @Option(
            names = "--walked",
            description = "With --add: it was walked on the ground, so its times are kept but not used.")
    private boolean walked;

    @Option(names = "--anyway", description = "With a flight log: adds it although most of the act is not found in it.")
    private boolean anyway;

    @Option(names = "--note", paramLabel = "TEXT", description = "With --add, --count or --ignore: a note on the pass.")
    private @Nullable String note;

    @Option(names = "--json", description = "Print what was learned as JSON.")
    private boolean json;

    /** One thing at a time. */
    static final class Change {
        @Option(
                names = "--add",
                paramLabel = "TIMES.csv",
                description = "Adds a pass timed by hand, one figure,startS,endS per line; needs --act.")
        private @Nullable Path table;

        @Option(names = "--count", paramLabel = "ID", description = "Use this pass again.")
        private @Nullable String counting;

        @Option(names = "--ignore", paramLabel = "ID", description = "Stop using this pass; it is kept.")
        private @Nullable String ignoring;
    }

    /** @param otherPasses where passes go whose show lies in a folder that may not be written to */
    public LearnCommand(Terminal terminal, Path otherPasses, PassIds ids, Workers workers) {
        this.workers = workers;
        this.terminal = terminal;
        this.otherPasses = otherPasses;
        this.ids = ids;
    }

    @Override
    public Integer call() throws ShowFileException {
        Path showFile = Objects.requireNonNull(file);
        ShowLoader loader = new ShowLoader(CatalogueFile::shipped, () -> Paces.DEFAULT, otherPasses, workers);
        LoadedShow loaded = new UsableShow(terminal).load(showFile, loader, LoadedShow.FLIGHTS);
        List<Act> acts = choice.of(loaded.show());
        PassesFile passes = new PassesFile(showFile, otherPasses);
        Change wanted = change;
        boolean adds = wanted != null && wanted.table != null;
        if ((walked && !adds) || (note != null && wanted == null && logs.isEmpty())) {
            terminal.complain("--walked goes with --add, and --note with --add, --count, --ignore or a flight log");
            return ExitCode.UNUSABLE;
        }
        if (wanted != null && !changed(wanted, passes, acts)) {
            return ExitCode.UNUSABLE;
        }
        if (!logs.isEmpty() && !(choice.named() && acts.size() == 1)) {
            terminal.complain("a flight log adds a pass of one act; name it with --act");
            return ExitCode.UNUSABLE;
        }
        boolean allRead = logs.isEmpty() || followed(loaded, passes, acts.get(0));
        PassesFile.Reading reading = passes.read();
        reading.findings().forEach(terminal::complain);
        loaded.learn(reading.passes());
        print(loaded, acts, reading);
        return allRead ? ExitCode.FINE : ExitCode.UNUSABLE;
    }

    private boolean changed(Change wanted, PassesFile passes, List<Act> acts) throws ShowFileException {
        Path table = wanted.table;
        String id = wanted.counting != null ? wanted.counting : wanted.ignoring;
        if (table != null) {
            return added(table, passes, acts);
        }
        List<String> known = passes.read().passes().stream().map(Pass::id).toList();
        if (id == null || !known.contains(id)) {
            terminal.complain("there is no pass " + id + "; "
                    + (known.isEmpty() ? "none has been kept yet" : "there are " + String.join(", ", known))
                    + (id == null ? "" : Nearest.hint(id, known)));
            return false;
        }
        say(passes.count(id, wanted.counting != null, ids.now()));
        if (note != null) {
            say(passes.note(id, note, ids.now()));
        }
        return true;
    }

    private boolean added(Path table, PassesFile passes, List<Act> acts) throws ShowFileException {
        if (!choice.named() || acts.size() != 1) {
            terminal.complain("--add adds a pass of one act; name it with --act");
            return false;
        }
        Act act = acts.get(0);
        keep(new PassAdding(act, choice.variant(act), ids).fromTable(table, walked), passes);
        return true;
    }

    private boolean followed(LoadedShow loaded, PassesFile passes, Act act) throws ShowFileException {
        Prediction prediction =
                loaded.prediction(act.id(), choice.variant(act).name()).orElse(null);
        if (prediction == null) {
            terminal.complain("the act " + act.id() + " cannot be predicted; crowdline check says why");
            return false;
        }
        if (prediction.flight().samples().size() < 2) {
            throw Complaints.onlyTimed(act);
        }
        PassAdding adding = new PassAdding(act, choice.variant(act), ids);
        return new LogPasses(
                        loaded.show(), FollowPlan.of(prediction.flight()), adding, passes, anyway, terminal::complain)
                .add(logs, pass -> keep(pass, passes));
    }

    private void keep(Pass pass, PassesFile passes) throws ShowFileException {
        PassesFile.Kept kept = passes.keep(note == null ? pass : pass.withNote(note));
        say(kept);
        if (!json) {
            terminal.line("Kept pass " + pass.id() + " in " + kept.file());
            terminal.line("");
        }
    }

    private void say(PassesFile.Kept kept) {
        if (kept.notice() != null) {
            terminal.complain(kept.notice());
        }
    }

    private void print(LoadedShow loaded, List<Act> acts, PassesFile.Reading reading) {
        Show show = loaded.show();
        List<Object> rows = new ArrayList<>();
        for (Act act : acts) {
            Prediction prediction =
                    loaded.prediction(act.id(), choice.variant(act).name()).orElse(null);
            if (prediction == null) {
                terminal.complain("the act " + act.id() + " cannot be predicted; crowdline check says why");
            } else if (json) {
                rows.add(new PassTable(act, prediction, reading.passes()).row());
            } else {
                new PassTable(act, prediction, reading.passes())
                        .lines(show.venue().timeZone())
                        .forEach(terminal::line);
            }
        }
        if (json) {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("acts", rows);
            all.put("findings", reading.findings());
            terminal.json(JsonOut.of(all));
        }
    }
}
