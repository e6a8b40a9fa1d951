package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.say.Spoken;
import crowdline.speech.say.SpokenText;
import crowdline.storage.file.LinesFile;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.settings.PaceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says how remarks sound and how long they take. */
@Command(
        name = "speak",
        mixinStandardHelpOptions = true,
        description =
                "Shows how remarks are spoken and how many seconds they take, with the band that 8 readings in 10 fall into.")
public final class SpeakCommand implements Callable<Integer> {
    private static final double PER_S = 1000;

    private final Terminal terminal;

    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = "--pace",
            paramLabel = "FILE",
            description = "The pace of the speaker; 160 words a minute if left out.")
    private @Nullable Path pace;

    @Mixin
    private final SayAsOption sayAs = new SayAsOption();

    @Option(names = "--file", paramLabel = "LINES.txt", description = "A text file with one remark per line.")
    private @Nullable Path lines;

    @Option(names = "--json", description = "Print as JSON.")
    private boolean json;

    @Parameters(paramLabel = "TEXT", arity = "0..*", description = "One remark; it needs no quotes.")
    private List<String> words = new ArrayList<>();

    /** One line of the answer; public so that it can be printed as JSON. */
    public record Timed(String text, String spoken, double seconds, double lowS, double highS) {}

    public SpeakCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        List<String> remarks = new ArrayList<>();
        if (!words.isEmpty()) {
            remarks.add(String.join(" ", words));
        }
        if (lines != null) {
            remarks.addAll(LinesFile.read(lines));
        }
        if (remarks.isEmpty()) {
            CommandLine command = Objects.requireNonNull(spec).commandLine();
            throw new CommandLine.ParameterException(command, "there is nothing to time; give a text or --file");
        }
        Pace speaker = pace == null ? Pace.DEFAULT : PaceFile.read(pace);
        Spoken spoken = sayAs.spoken(terminal);
        List<Timed> timed =
                remarks.stream().map(text -> timed(text, spoken, speaker)).toList();
        if (json) {
            terminal.json(JsonOut.of(Map.of("remarks", timed)));
        } else {
            timed.forEach(t -> terminal.line(String.format(
                    Locale.ROOT, "%6.1f s (%.1f to %.1f)  %s", t.seconds(), t.lowS(), t.highS(), t.spoken())));
        }
        return ExitCode.FINE;
    }

    private static Timed timed(String text, Spoken spoken, Pace pace) {
        SpokenText sounds = spoken.expand(text);
        SpokenTime time = pace.time(sounds);
        return new Timed(text, sounds.spoken(), toMs(time.seconds()), toMs(time.lowS()), toMs(time.highS()));
    }

    private static double toMs(double seconds) {
        return Math.round(seconds * PER_S) / PER_S;
    }
}
