package crowdline.app.command;

import crowdline.app.shell.Complaints;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.follow.Boundaries;
import crowdline.follow.FollowNow;
import crowdline.follow.FollowPlan;
import crowdline.follow.LogDistance;
import crowdline.loaded.LogFollowing;
import crowdline.loaded.LogReadings;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.show.CatalogueFile;
import crowdline.telemetry.IgcHeight;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Follows an act in a flight log. */
@Command(
        name = "follow",
        mixinStandardHelpOptions = true,
        description = "Finds which figure is flown when in a flight log (NMEA 0183, IGC or GPX), and how sure that is.",
        footer = {
            "Prints a line at every change and a summary; with --json also one at every element and at least every second.",
            "Ends with 0 if the log shows the act, 1 if not or only a small part of it, 2 if a file cannot be used.",
            "For commentary only, never for judging a flight."
        })
public final class FollowCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "SHOW", description = "The show file.")
    private @Nullable Path file;

    @Parameters(index = "1", paramLabel = "LOG", description = "The flight log.")
    private @Nullable Path log;

    @Mixin
    private final ActChoice choice = new ActChoice();

    @Option(
            names = "--start",
            paramLabel = "S",
            description = "Seconds into the log at which the first figure begins, if you know.")
    private @Nullable Double startS;

    @Option(names = "--pressure", description = "Use the pressure heights of an IGC file, not the satellite ones.")
    private boolean pressure;

    @Option(names = "--json", description = "Print JSON, one object per line.")
    private boolean json;

    public FollowCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        Show show = new UsableShow(terminal).read(Objects.requireNonNull(file));
        List<Act> acts = choice.of(show);
        if (acts.size() != 1) {
            terminal.complain("follow takes one act; name it with --act");
            return ExitCode.UNUSABLE;
        }
        Double start = startS;
        if (start != null && !(start >= 0 && start <= 1e6)) {
            terminal.complain("--start is " + start + "; it must be from 0 to 1000000 seconds");
            return ExitCode.UNUSABLE;
        }
        FollowPlan plan = plan(show, acts.get(0));
        LogReadings readings = LogReadings.read(
                Objects.requireNonNull(log), show, pressure ? IgcHeight.PRESSURE : IgcHeight.GNSS, terminal::complain);
        return follow(plan, readings, start);
    }

    private FollowPlan plan(Show show, Act act) throws ShowFileException {
        Variant variant = choice.variant(act);
        if (!show.canBePredicted(act)) {
            throw Complaints.notPredicted(show, act);
        }
        Flight flight = new Predictor(show, CatalogueFile.shipped(), act, variant).predict();
        if (flight.samples().size() < 2) {
            throw Complaints.onlyTimed(act);
        }
        return FollowPlan.of(flight);
    }

    private int follow(FollowPlan plan, LogReadings log, @Nullable Double start) {
        FollowTeller teller = new FollowTeller(plan, json, json ? this::jsonLine : this::wordLine);
        if (!json) {
            log.notes().forEach(terminal::line);
        }
        List<FollowNow> said = LogFollowing.follow(plan, log.readings(), start);
        said.forEach(teller::see);
        Boundaries found = Boundaries.said(plan, said, log.readings());
        boolean shown = (start == null ? Boundaries.of(plan, log.readings()) : found).show(plan);
        if (json) {
            terminal.json(JsonOut.line(Map.of("summary", summary(plan, log, found, shown))));
        } else {
            table(plan, found, shown);
            if (!shown) {
                terminal.line(LogDistance.of(plan, log.readings()).words());
            }
        }
        return shown ? ExitCode.FINE : ExitCode.BLOCKED;
    }

    private void jsonLine(FollowPlan plan, FollowNow now) {
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("tS", JsonOut.thousandths(now.tS()));
        row.put("figure", FollowTeller.figureId(plan, now));
        row.put("element", now.elementIndex());
        row.put("confidence", JsonOut.thousandths(now.confidence()));
        row.put("state", FollowTeller.word(now.state()));
        row.put("or", now.or().map(other -> plan.figureId(other.figureIndex())).orElse(null));
        terminal.json(JsonOut.line(row));
    }

    private void wordLine(FollowPlan plan, FollowNow now) {
        String id = FollowTeller.figureId(plan, now);
        String name = id == null ? "" : FollowTeller.names(plan, now);
        terminal.line(String.format(
                Locale.UK,
                "%8.1f s  %-9s %3.0f%%  %s",
                now.tS(),
                FollowTeller.word(now.state()),
                100 * now.confidence(),
                name));
    }

    private static Map<String, Object> summary(FollowPlan plan, LogReadings log, Boundaries found, boolean shown) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("readings", log.readings().size());
        row.put("showsAct", shown);
        row.put("distance", distance(LogDistance.of(plan, log.readings())));
        row.put("figures", found.figures().stream().map(f -> row(plan, f)).toList());
        row.put("missed", found.dropped().stream().map(plan::figureId).toList());
        row.put("repeated", found.repeated().stream().map(plan::figureId).toList());
        row.put("notes", log.notes());
        return row;
    }

    private static Map<String, Object> distance(LogDistance off) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("outsideM", JsonOut.thousandths(off.asideM()));
        row.put("aboveM", JsonOut.thousandths(off.heightM()));
        row.put("steepShare", JsonOut.thousandths(off.steepShare()));
        row.put("plannedSteepShare", JsonOut.thousandths(off.plannedSteepShare()));
        return row;
    }

    private static Map<String, Object> row(FollowPlan plan, Boundaries.Span span) {
        Map<String, Object> figure = new LinkedHashMap<>();
        figure.put("figure", plan.figureId(span.figureIndex()));
        figure.put("startS", JsonOut.thousandths(span.startS()));
        figure.put("endS", JsonOut.thousandths(span.endS()));
        figure.put("confidence", JsonOut.thousandths(span.confidence()));
        return figure;
    }

    private void table(FollowPlan plan, Boundaries found, boolean shown) {
        terminal.line("");
        terminal.line(found.figures().isEmpty() ? "No figure of this act was found in the log." : "Found in the log:");
        for (Boundaries.Span f : found.figures()) {
            terminal.line(String.format(
                    Locale.UK,
                    "%8.1f s to %7.1f s  %6.1f s  %s",
                    f.startS(),
                    f.endS(),
                    f.endS() - f.startS(),
                    plan.name(f.figureIndex())));
        }
        if (!found.figures().isEmpty() && !shown) {
            terminal.line("Too little was found for it to be this act: " + found.recognised(plan) + " of the "
                    + plan.recognisable() + " figures whose path is known, in the order planned.");
        }
        if (!found.figures().isEmpty() && !found.dropped().isEmpty()) {
            terminal.line("Not found: "
                    + String.join(", ", found.dropped().stream().map(plan::name).toList()));
        }
    }
}
