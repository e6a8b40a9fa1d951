package crowdline.app.command;

import crowdline.app.shell.Complaints;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.Terminal;
import crowdline.flight.Drift;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.Spread;
import crowdline.flight.Workers;
import crowdline.flight.air.Air;
import crowdline.loaded.ActOrigins;
import crowdline.measure.Measures;
import crowdline.sheet.Columns;
import crowdline.sheet.RunningSheet;
import crowdline.sheet.TraceTable;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Severity;
import crowdline.show.weather.MetarAir;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.passes.PassesFile;
import crowdline.storage.show.CatalogueFile;
import crowdline.timing.LearnedTimes;
import crowdline.timing.PredictedTimes;
import crowdline.timing.ToldTimes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Predicts the acts of a show. */
@Command(
        name = "predict",
        mixinStandardHelpOptions = true,
        description =
                "Predicts when each figure begins, how long it lasts, how fast and how high it is flown, and the load felt.",
        footer = {
            "Ends with 0 if all went well, 1 if a figure cannot be flown or a given limit is broken, 2 if the file cannot"
                    + " be used.",
            RunningSheet.CAUTION
        })
public final class PredictCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Workers workers;

    @Parameters(paramLabel = "SHOW", description = "The show file.")
    private @Nullable Path file;

    @Mixin
    private final ActChoice choice = new ActChoice();

    @Option(names = "--json", description = "Print the prediction as JSON.")
    private boolean json;

    @Option(names = "--trace", paramLabel = "FILE.csv", description = "Write a sample every 0.1 s; needs --act.")
    private @Nullable Path trace;

    @Option(
            names = "--picture",
            paramLabel = "FILE.svg|FILE.png",
            description = "Draw the act from the crowd and from above; needs --act.")
    private @Nullable Path picture;

    @Mixin
    private final UnitsOption units = new UnitsOption();

    @Mixin
    private final AirOptions airOptions = new AirOptions();

    @Option(
            names = "--flights",
            paramLabel = "N",
            defaultValue = "200",
            description = "Varied flights behind each band (${DEFAULT-VALUE}).")
    private int flights;

    @Option(names = "--seed", paramLabel = "S", defaultValue = "1", description = "Seed of the varied flights.")
    private long seed;

    public PredictCommand(Terminal terminal, Workers workers) {
        this.workers = workers;
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        Measures measures = units.measures(Folders.here());
        Show show = new UsableShow(terminal).read(Objects.requireNonNull(file));
        MetarAir air;
        try {
            air = airOptions.over(show.air());
        } catch (IllegalArgumentException e) {
            terminal.complain(String.valueOf(e.getMessage()));
            return ExitCode.UNUSABLE;
        }
        if (flights < 1 || flights > 100_000) {
            terminal.complain("--flights is " + flights + "; it must be from 1 to 100000");
            return ExitCode.UNUSABLE;
        }
        List<Act> acts = choice.of(show);
        if (trace != null && acts.size() != 1) {
            terminal.complain("--trace writes one act; name it with --act");
            return ExitCode.UNUSABLE;
        }
        String refusal = picture == null ? null : PictureFile.refusal(picture, acts.size());
        if (refusal != null) {
            terminal.complain(refusal);
            return ExitCode.UNUSABLE;
        }
        return predict(show.withAir(air.air()), acts, air, measures);
    }

    private int predict(Show show, List<Act> acts, MetarAir air, Measures measures) throws ShowFileException {
        Catalogue catalogue = CatalogueFile.shipped();
        PassesFile.Reading passes =
                new PassesFile(Objects.requireNonNull(file), Folders.here().passes()).read();
        passes.findings().forEach(terminal::complain);
        List<Object> rows = new ArrayList<>();
        List<Object> findings = new ArrayList<>();
        boolean blocked = false;
        if (!json) {
            AirLines.of(air, measures).forEach(terminal::line);
            show.leftOut().ifPresent(said -> say("Note: " + said + "."));
            terminal.line("");
        }
        for (Act act : acts) {
            Variant variant = choice.variant(act);
            Air blowing = Air.of(show.air(), show.venue());
            Predictor predictor = predictor(show, catalogue, act, variant, blowing);
            Flight flight = predictor.predict();
            Flight still =
                    predictor(show, catalogue, act, variant, blowing.still()).predict();
            List<Drift> drifts =
                    Air.isWindPlaced(show.air(), show.venue()) ? Drift.between(flight, still) : Drift.unknown(flight);
            List<Spread.Band> bands = new Spread(predictor, seed, workers)
                    .fly(flights, new FlightProgress(terminal, System::nanoTime))
                    .bands();
            LearnedTimes learned =
                    LearnedTimes.of(ToldTimes.of(act).on(PredictedTimes.of(flight, bands)), passes.passes());
            write(flight);
            if (picture != null) {
                PictureFile.write(picture, show, act, flight, measures);
            }
            blocked |= flight.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR);
            ActOrigins origins = ActOrigins.of(show, act, flight, catalogue.with(show.figures()), passes.passes());
            if (json) {
                Map<String, Object> row = PredictRows.act(act, flight, bands, drifts, learned);
                row.put("assumed", origins.sentence().orElse(null));
                rows.add(row);
                flight.findings().forEach(f -> findings.add(PredictRows.finding(act, f)));
            } else {
                RunningSheet.lines(show, act, flight, bands, drifts, learned, List.of(), measures)
                        .forEach(terminal::line);
                origins.sentence().ifPresent(this::say);
                terminal.line("");
            }
        }
        if (json) {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("acts", rows);
            all.put("findings", findings);
            all.put("air", PredictRows.air(air.air()));
            all.put("airNotes", air.notes());
            all.put("heights", RunningSheet.HEIGHTS);
            terminal.json(JsonOut.of(all));
        }
        return blocked ? ExitCode.BLOCKED : ExitCode.FINE;
    }

    private static Predictor predictor(Show show, Catalogue catalogue, Act act, Variant variant, Air air)
            throws ShowFileException {
        try {
            return new Predictor(show, catalogue, act, variant, air);
        } catch (IllegalArgumentException e) {
            throw new ShowFileException(e.getMessage() + "; crowdline check says where");
        }
    }

    private void say(String sentence) {
        Columns.wrapped(sentence, Columns.MOST).forEach(terminal::line);
    }

    private void write(Flight flight) throws ShowFileException {
        Path to = trace;
        if (to == null) {
            return;
        }
        try {
            Files.write(to, TraceTable.lines(flight.samples()));
        } catch (IOException e) {
            throw Complaints.notWritten("the trace cannot be written", to);
        }
    }
}
