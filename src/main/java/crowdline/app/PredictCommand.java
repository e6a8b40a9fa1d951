package crowdline.app;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.FlightFinding;
import crowdline.flight.Predictor;
import crowdline.flight.Spread;
import crowdline.flight.Units;
import crowdline.sheet.RunningSheet;
import crowdline.sheet.TraceTable;
import crowdline.show.Act;
import crowdline.show.Catalogue;
import crowdline.show.Severity;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.storage.CatalogueFile;
import crowdline.storage.JsonOut;
import crowdline.storage.PassesFile;
import crowdline.storage.ShowFile;
import crowdline.storage.ShowFileException;
import crowdline.storage.ShowReading;
import crowdline.timing.LearnedFigure;
import crowdline.timing.LearnedTimes;
import crowdline.timing.PredictedTimes;
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
        description = "Predicts when each figure comes, how long it lasts, how fast, how high and how heavy.",
        footer = {
            "Ends with 0 if all went well, 1 if a figure cannot be flown or a given limit is broken, 2 if the file cannot"
                    + " be used.",
            RunningSheet.CAUTION
        })
final class PredictCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "SHOW", description = "The show file.")
    private @Nullable Path file;

    @Mixin
    private final ActChoice choice = new ActChoice();

    @Option(names = "--json", description = "Print the prediction as JSON.")
    private boolean json;

    @Option(names = "--trace", paramLabel = "FILE.csv", description = "Write a sample every 0.1 s; needs --act.")
    private @Nullable Path trace;

    @Option(
            names = "--flights",
            paramLabel = "N",
            defaultValue = "200",
            description = "Varied flights behind each band (${DEFAULT-VALUE}).")
    private int flights;

    @Option(names = "--seed", paramLabel = "S", defaultValue = "1", description = "Seed of the varied flights.")
    private long seed;

    PredictCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        ShowReading reading = new ShowFile().read(Objects.requireNonNull(file));
        Show show = reading.show();
        if (show == null) {
            reading.findings().forEach(found -> terminal.err().println(found.asLine()));
            terminal.complain("the show cannot be predicted until these are mended");
            return ExitCode.UNUSABLE;
        }
        if (flights < 1 || flights > 100_000) {
            terminal.complain("--flights is " + flights + "; it must be from 1 to 100000");
            return ExitCode.UNUSABLE;
        }
        List<Act> acts = choice.of(show, terminal).orElse(null);
        if (acts == null) {
            return ExitCode.UNUSABLE;
        }
        if (trace != null && acts.size() != 1) {
            terminal.complain("--trace writes one act; name it with --act");
            return ExitCode.UNUSABLE;
        }
        return predict(show, acts);
    }

    private int predict(Show show, List<Act> acts) throws ShowFileException {
        Catalogue catalogue = CatalogueFile.shipped();
        PassesFile.Reading passes =
                new PassesFile(Objects.requireNonNull(file), Folders.here().passes()).read();
        passes.findings().forEach(terminal::complain);
        List<Object> rows = new ArrayList<>();
        List<Object> findings = new ArrayList<>();
        boolean blocked = false;
        for (Act act : acts) {
            Variant variant = choice.variant(act);
            Predictor predictor = predictor(show, catalogue, act, variant);
            Flight flight = predictor.predict();
            List<Spread.Band> bands =
                    new Spread(predictor, seed).fly(flights, share -> {}).bands();
            LearnedTimes learned = LearnedTimes.of(PredictedTimes.of(flight, bands), passes.passes());
            write(flight);
            blocked |= flight.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR);
            if (json) {
                rows.add(row(act, flight, bands, learned));
                flight.findings().forEach(f -> findings.add(row(act, f)));
            } else {
                RunningSheet.lines(show, act, flight, bands, learned, List.of()).forEach(terminal::line);
                terminal.line("");
            }
        }
        if (json) {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("acts", rows);
            all.put("findings", findings);
            terminal.json(JsonOut.of(all));
        }
        return blocked ? ExitCode.BLOCKED : ExitCode.FINE;
    }

    private static Predictor predictor(Show show, Catalogue catalogue, Act act, Variant variant)
            throws ShowFileException {
        try {
            return new Predictor(show, catalogue, act, variant);
        } catch (IllegalArgumentException e) {
            throw new ShowFileException(e.getMessage() + "; crowdline check says where");
        }
    }

    private void write(Flight flight) throws ShowFileException {
        Path to = trace;
        if (to == null) {
            return;
        }
        try {
            Files.write(to, TraceTable.lines(flight.samples()));
        } catch (IOException e) {
            throw new ShowFileException("the trace cannot be written to " + to + "; choose a folder you may write to");
        }
    }

    private static Map<String, Object> row(Act act, FlightFinding f) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("severity", f.severity());
        row.put("code", f.code());
        row.put("act", act.id());
        row.put("figure", f.figureId());
        row.put("message", f.message());
        return row;
    }

    private static Map<String, Object> row(Act act, Flight flight, List<Spread.Band> bands, LearnedTimes learned) {
        List<Object> figures = new ArrayList<>();
        for (int i = 0; i < flight.figures().size(); i++) {
            figures.add(
                    row(flight.figures().get(i), bands.get(i), learned.figures().get(i)));
        }
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", act.id());
        row.put("variant", flight.variant());
        row.put("passes", learned.passes());
        row.put("figures", figures);
        return row;
    }

    private static Map<String, Object> row(FigureFlight f, Spread.Band band, LearnedFigure learned) {
        boolean banded = Double.isFinite(band.lowS());
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", f.figureId());
        row.put("name", f.name());
        row.put("startS", tidy(f.startS()));
        row.put("endS", tidy(f.endS()));
        row.put("durationS", tidy(f.durationS()));
        row.put("bandLowS", tidy(banded ? band.lowS() : f.durationS()));
        row.put("bandHighS", tidy(banded ? band.highS() : f.durationS()));
        row.put("passes", learned.passes());
        row.put("learnedStartS", tidy(learned.learned().startS()));
        row.put("learnedS", tidy(learned.learned().durationS()));
        row.put("learnedLowS", tidy(learned.learned().lowS()));
        row.put("learnedHighS", tidy(learned.learned().highS()));
        row.put("entryKt", tidy(Units.ktFromMps(f.entryMps())));
        row.put("exitKt", tidy(Units.ktFromMps(f.exitMps())));
        row.put("minKt", tidy(Units.ktFromMps(f.leastMps())));
        row.put("maxKt", tidy(Units.ktFromMps(f.greatestMps())));
        row.put("lowestFt", tidy(Units.ftFromM(f.lowestM())));
        row.put("highestFt", tidy(Units.ftFromM(f.highestM())));
        row.put("maxG", tidy(f.greatestG()));
        row.put("minG", tidy(f.leastG()));
        row.put("energyInFt", tidy(Units.ftFromM(f.energyInM())));
        row.put("energyOutFt", tidy(Units.ftFromM(f.energyOutM())));
        row.put("alongAM", tidy(f.exitAlongM()));
        row.put("alongBM", tidy(f.exitAwayM()));
        return row;
    }

    private static double tidy(double value) {
        return Math.rint(value * 1000) / 1000 + 0.0;
    }
}
