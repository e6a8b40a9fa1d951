package crowdline.app;

import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.follow.FollowNow;
import crowdline.follow.FollowPlan;
import crowdline.follow.Follower;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.storage.CatalogueFile;
import crowdline.storage.JsonOut;
import crowdline.storage.ShowFile;
import crowdline.storage.ShowFileException;
import crowdline.storage.ShowReading;
import crowdline.telemetry.IgcHeight;
import crowdline.telemetry.Reading;
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
        description = "Says which figure is flown when in a flight log (NMEA 0183, IGC or GPX), and how sure that is.",
        footer = {
            "With --json a line at every change and at least every second, and a summary at the end.",
            "Ends with 0 if figures were found, 1 if none was, 2 if a file cannot be used.",
            "For commentary only, never for judging a flight."
        })
final class FollowCommand implements Callable<Integer> {
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
            description = "Seconds into the log at which the first figure begins, if somebody knows.")
    private @Nullable Double startS;

    @Option(names = "--pressure", description = "Take the pressure heights of an IGC file, not those by satellite.")
    private boolean pressure;

    @Option(names = "--json", description = "Print JSON, an object a line.")
    private boolean json;

    FollowCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        ShowReading read = new ShowFile().read(Objects.requireNonNull(file));
        Show show = read.show();
        if (show == null) {
            read.findings().forEach(found -> terminal.err().println(found.asLine()));
            terminal.complain("no act of this show can be followed until these are mended");
            return ExitCode.UNUSABLE;
        }
        List<Act> acts = choice.of(show, terminal).orElse(null);
        if (acts == null) {
            return ExitCode.UNUSABLE;
        }
        if (acts.size() != 1) {
            terminal.complain("follow takes one act; name it with --act");
            return ExitCode.UNUSABLE;
        }
        Double start = startS;
        if (start != null && !(start >= 0 && start <= 1e6)) {
            terminal.complain("--start is " + start + "; it must be from 0 to 1000000 seconds");
            return ExitCode.UNUSABLE;
        }
        LogReadings readings =
                LogReadings.read(Objects.requireNonNull(log), show, pressure ? IgcHeight.PRESSURE : IgcHeight.GNSS);
        return follow(plan(show, acts.get(0)), readings, start);
    }

    private FollowPlan plan(Show show, Act act) throws ShowFileException {
        Variant variant = choice.variant(act);
        if (show.airframe(act.airframe()).isEmpty()) {
            throw new ShowFileException("act " + act.id() + " names the airframe " + act.airframe()
                    + ", which the show does not have; crowdline check says where");
        }
        Flight flight = new Predictor(show, CatalogueFile.shipped(), act, variant).predict();
        return FollowPlan.of(flight);
    }

    private int follow(FollowPlan plan, LogReadings log, @Nullable Double start) {
        FollowedLog followed = new FollowedLog(plan, json ? this::jsonLine : this::wordLine);
        if (!json) {
            log.notes().forEach(terminal::line);
        }
        Follower follower = new Follower(plan);
        double beginsS = start == null ? Double.POSITIVE_INFINITY : start;
        boolean started = false;
        for (Reading reading : log.readings()) {
            if (!started && reading.tS() >= beginsS) {
                followed.see(follower.start(beginsS));
                started = true;
            }
            followed.see(follower.reading(reading));
        }
        List<FollowedLog.Stretch> figures = followed.finish();
        if (json) {
            terminal.json(JsonOut.line(Map.of("summary", summary(plan, log, figures))));
        } else {
            table(plan, figures);
        }
        return figures.isEmpty() ? ExitCode.BLOCKED : ExitCode.FINE;
    }

    private void jsonLine(FollowPlan plan, FollowNow now) {
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("tS", rounded(now.tS()));
        row.put("figure", FollowedLog.figureId(plan, now));
        row.put("element", now.elementIndex());
        row.put("confidence", rounded(now.confidence()));
        row.put("state", FollowedLog.word(now.state()));
        terminal.json(JsonOut.line(row));
    }

    private void wordLine(FollowPlan plan, FollowNow now) {
        String id = FollowedLog.figureId(plan, now);
        String name = id == null ? "" : plan.name(now.figureIndex());
        terminal.line(String.format(
                Locale.UK,
                "%8.1f s  %-9s %3.0f %%  %s",
                now.tS(),
                FollowedLog.word(now.state()),
                100 * now.confidence(),
                name));
    }

    private static Map<String, Object> summary(FollowPlan plan, LogReadings log, List<FollowedLog.Stretch> figures) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("readings", log.readings().size());
        row.put(
                "figures",
                figures.stream()
                        .map(f -> {
                            Map<String, Object> figure = new LinkedHashMap<>();
                            figure.put("figure", plan.figureId(f.index()));
                            figure.put("startS", rounded(f.startS()));
                            figure.put("endS", rounded(f.endS()));
                            figure.put("confidence", rounded(f.confidence()));
                            return figure;
                        })
                        .toList());
        row.put("missed", FollowedLog.missed(plan, figures));
        row.put("notes", log.notes());
        return row;
    }

    private void table(FollowPlan plan, List<FollowedLog.Stretch> figures) {
        terminal.line("");
        terminal.line(figures.isEmpty() ? "No figure of this act was found in the log." : "Found in the log:");
        for (FollowedLog.Stretch f : figures) {
            terminal.line(String.format(
                    Locale.UK,
                    "%8.1f s to %7.1f s  %6.1f s  %s",
                    f.startS(),
                    f.endS(),
                    f.endS() - f.startS(),
                    plan.name(f.index())));
        }
        List<String> missed = FollowedLog.missed(plan, figures);
        if (!figures.isEmpty() && !missed.isEmpty()) {
            terminal.line("Not found: " + String.join(", ", missed));
        }
    }

    private static double rounded(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
