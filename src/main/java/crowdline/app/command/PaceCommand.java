package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.PaceFit;
import crowdline.speech.pace.PaceScore;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.pace.TimedRemark;
import crowdline.speech.say.Spoken;
import crowdline.speech.say.SpokenText;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.passes.TimedFile;
import crowdline.storage.settings.PaceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Learns a speaker's pace from timed remarks. */
@Command(
        name = "pace",
        mixinStandardHelpOptions = true,
        description = "Works out how fast somebody speaks from remarks timed with a stopwatch.",
        footer = {
            "TIMED.csv has one remark per line: seconds,text. Put a remark with a comma in it in double quotes.",
            "Time ten remarks or more, of different lengths, spoken as on the day."
        })
public final class PaceCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "TIMED.csv", description = "The timed remarks.")
    private @Nullable Path timed;

    @Option(names = "--out", paramLabel = "PACE.json", description = "Save the pace here.")
    private @Nullable Path out;

    @Option(names = "--speaker", paramLabel = "NAME", description = "Whose pace it is; the file's name if left out.")
    private @Nullable String speaker;

    @Option(names = "--json", description = "Print as JSON.")
    private boolean json;

    @Mixin
    private final SayAsOption sayAs = new SayAsOption();

    public PaceCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        Path file = Objects.requireNonNull(timed);
        List<TimedRemark> remarks = remarks(file, sayAs.spoken(terminal));
        Pace pace;
        try {
            pace = PaceFit.fit(name(file), remarks);
        } catch (IllegalArgumentException e) {
            throw new ShowFileException(file + ": " + e.getMessage());
        }
        Optional<PaceScore> score = PaceScore.leaveOneOut(remarks);
        if (out != null) {
            PaceFile.write(out, pace);
        }
        if (json) {
            terminal.json(JsonOut.of(row(pace, remarks.size(), score)));
        } else {
            lines(pace, remarks.size(), score).forEach(terminal::line);
        }
        return ExitCode.FINE;
    }

    private String name(Path file) throws ShowFileException {
        String given = speaker;
        if (given != null && given.isBlank()) {
            throw new ShowFileException("--speaker is blank; give the speaker's name or leave it out");
        }
        return given == null ? file.getFileName().toString().replaceFirst("(?<=.)\\.[^.]*$", "") : given.strip();
    }

    private static List<TimedRemark> remarks(Path file, Spoken spoken) throws ShowFileException {
        List<TimedRemark> remarks = new ArrayList<>();
        for (TimedFile.Row row : TimedFile.read(file)) {
            try {
                TimedRemark remark = new TimedRemark(row.seconds(), spoken.expand(row.text()));
                PaceFit.requirePlausible(remark);
                remarks.add(remark);
            } catch (IllegalArgumentException e) {
                throw new ShowFileException(file + ", line " + row.line() + ", column 1: " + e.getMessage());
            }
        }
        return remarks;
    }

    private List<String> lines(Pace pace, int remarks, Optional<PaceScore> score) {
        List<String> lines = new ArrayList<>();
        lines.add(pace.name() + ": " + PaceFit.explanation(remarks));
        lines.add(line("each remark", "%.2f s", pace.fixedS()));
        lines.add(line("each letter", "%.4f s", pace.perLetterS()));
        lines.add(line("each comma", "%.2f s", pace.perCommaS()));
        lines.add(line("each stop inside", "%.2f s", pace.perStopS()));
        lines.add(pace.bandInWords());
        lines.add(PaceScore.inWords(score));
        if (out != null) {
            lines.add("Saved as " + out + ".");
        }
        return lines;
    }

    private static Map<String, Object> row(Pace pace, int remarks, Optional<PaceScore> score) {
        SpokenTime one = band(pace);
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("speaker", pace.name());
        row.put("remarks", remarks);
        row.put("everyTermFitted", remarks >= PaceFit.ENOUGH);
        row.put("fixedS", pace.fixedS());
        row.put("perLetterS", pace.perLetterS());
        row.put("perCommaS", pace.perCommaS());
        row.put("perStopS", pace.perStopS());
        row.put("relativeError", pace.relativeError());
        row.put("bandLow", one.lowS() / one.seconds());
        row.put("bandHigh", one.highS() / one.seconds());
        row.put("leftOutMeanError", score.map(PaceScore::meanError).orElse(null));
        row.put("leftOutUnderTenth", score.map(PaceScore::shareUnderTenth).orElse(null));
        return row;
    }

    /** A remark of any length shows the band, which is relative. */
    private static SpokenTime band(Pace pace) {
        return pace.time(new SpokenText("loop", "loop"));
    }

    private static String line(String what, String format, double value) {
        return String.format(Locale.UK, "  %-18s" + format, what, value);
    }
}
