package crowdline.app;

import crowdline.app.command.ArrangeCommand;
import crowdline.app.command.CheckCommand;
import crowdline.app.command.DebriefCommand;
import crowdline.app.command.DemoCommand;
import crowdline.app.command.FactsCommand;
import crowdline.app.command.FollowCommand;
import crowdline.app.command.GlossaryCommand;
import crowdline.app.command.IncidentTemplateCommand;
import crowdline.app.command.LearnCommand;
import crowdline.app.command.PaceCommand;
import crowdline.app.command.PlanCommand;
import crowdline.app.command.PracticeCommand;
import crowdline.app.command.PredictCommand;
import crowdline.app.command.SheetCommand;
import crowdline.app.command.SpeakCommand;
import crowdline.app.command.TableCommand;
import crowdline.app.demo.PicturesCommand;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.PedalPort;
import crowdline.app.shell.Terminal;
import crowdline.app.shell.VersionLine;
import crowdline.app.shell.WindowOpener;
import crowdline.flight.Workers;
import crowdline.loaded.PassIds;
import crowdline.running.WorkerThreads;
import crowdline.show.bounds.Nearest;
import crowdline.storage.file.ShowFileException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ThreadLocalRandom;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line: {@code crowdline [SHOW]} and its commands. */
@Command(
        name = "crowdline",
        mixinStandardHelpOptions = true,
        versionProvider = VersionLine.class,
        description = "For the commentator at an air display.",
        footer = "Predictions are for commentary only; the display director and local rules decide.")
final class Commands implements Callable<Integer> {
    private static final Logger LOG = System.getLogger(Commands.class.getName());

    private final Terminal terminal;
    private final WindowOpener opening;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "SHOW", arity = "0..1", description = "The show file to open.")
    private @Nullable String show;

    @Option(
            names = "--receiver",
            paramLabel = "WHERE",
            description =
                    "Where the aircraft's position comes from: a serial port such as /dev/ttyUSB0 or COM3, a flight"
                            + " log to be played as it was flown, or - for a receiver's bytes on standard input.")
    private @Nullable String receiver;

    @Option(
            names = "--faster",
            paramLabel = "N",
            defaultValue = "1",
            description = "With --receiver LOG: the flight log is played N times as fast as it was flown, from 0.1 to"
                    + " 100, to try it out; figures are recognised only at about the speed flown.")
    private double faster;

    @Option(
            names = "--pedal",
            paramLabel = "PORT[@BAUD]",
            description =
                    "The serial port of a foot switch, and its speed if that is not 9,600 baud. It is remembered; Ctrl+B in the window sets what it does.")
    private @Nullable String pedal;

    @Option(
            names = "--second",
            description =
                    "The second window alone, for a co-commentator: follows the show while another Crowdline on this"
                            + " computer runs it, and changes nothing. T changes its colours, Ctrl + and - its size, F11 fills"
                            + " the screen.")
    private boolean second;

    private Commands(Terminal terminal, WindowOpener opening) {
        this.terminal = terminal;
        this.opening = opening;
    }

    /** Every command, in the order help lists them. A new one is added here and nowhere else. */
    private static List<Object> all(Terminal terminal, WindowOpener opening, Workers workers) {
        return List.of(
                new ArrangeCommand(terminal, System.in, Clock.system(ZoneId.systemDefault())),
                new CheckCommand(terminal),
                new PredictCommand(terminal, workers),
                new PlanCommand(terminal, Folders.here(), workers),
                new LearnCommand(
                        terminal,
                        Folders.here().passes(),
                        new PassIds(
                                Clock.systemUTC(),
                                () -> ThreadLocalRandom.current().nextInt()),
                        workers),
                new FactsCommand(terminal),
                new FollowCommand(terminal),
                new GlossaryCommand(terminal),
                new PracticeCommand(terminal),
                new TableCommand(terminal, System.in),
                new SheetCommand(terminal, Folders.here(), workers),
                new SpeakCommand(terminal),
                new DebriefCommand(terminal, Folders.here()),
                new PaceCommand(terminal),
                new DemoCommand(terminal, opening, Folders.here(), workers),
                new IncidentTemplateCommand(terminal),
                new PicturesCommand(terminal, Folders.here(), workers));
    }

    /** Runs a command line and answers its exit code. */
    static int run(String[] args, Terminal terminal, WindowOpener opening) {
        Commands root = new Commands(terminal, opening);
        CommandLine line = new CommandLine(root);
        line.setOut(writer(terminal.out()));
        line.setErr(writer(terminal.err()));
        line.setParameterExceptionHandler((e, given) -> root.wrongUse(e, given));
        line.setExecutionExceptionHandler((e, command, parsed) -> root.failed(e));
        try (WorkerThreads workers = new WorkerThreads()) {
            all(terminal, opening, workers).forEach(line::addSubcommand);
            return line.execute(args);
        } catch (OutOfMemoryError e) {
            terminal.complain("this takes more memory than the program has; use a smaller file, or give it more with"
                    + " CROWDLINE_JAVA_OPTS=-Xmx1g");
            return ExitCode.UNUSABLE;
        }
    }

    private int watch(@Nullable String named) {
        if (named == null || !isThere(named)) {
            terminal.complain("--second needs the show that runs, such as: crowdline --second day.json");
            return ExitCode.UNUSABLE;
        }
        return opening.watch(Path.of(named), terminal);
    }

    @Override
    public Integer call() {
        String named = show;
        if (!(faster >= 0.1 && faster <= 100)) {
            terminal.complain("--faster is " + faster + "; it must be from 0.1 to 100");
            return ExitCode.UNUSABLE;
        }
        if (second) {
            return watch(named);
        }
        if (named == null || isThere(named)) {
            PedalPort at;
            try {
                at = pedal == null ? null : PedalPort.of(pedal);
            } catch (IllegalArgumentException e) {
                terminal.complain(String.valueOf(e.getMessage()));
                return ExitCode.UNUSABLE;
            }
            return opening.open(
                    named == null ? null : Path.of(named), new WindowOpener.Devices(receiver, faster, at), terminal);
        }
        String hint = spec == null ? "" : Nearest.hint(named, spec.subcommands().keySet());
        terminal.complain("there is no file or command " + named
                + (hint.isEmpty() ? "; crowdline --help lists the commands" : hint));
        return ExitCode.UNUSABLE;
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, Charset.defaultCharset()), true);
    }

    private static boolean isThere(String name) {
        try {
            return Files.exists(Path.of(name));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private int wrongUse(ParameterException e, String[] given) {
        CommandLine command = e.getCommandLine();
        CommandLine root = command;
        while (root.getParent() != null) {
            root = root.getParent();
        }
        boolean misspelt = command.equals(root) && given.length > 0 && !given[0].startsWith("-") && !isThere(given[0]);
        String hint = misspelt ? Nearest.hint(given[0], root.getSubcommands().keySet()) : suggestion(e);
        String what = misspelt ? "there is no command " + given[0] : e.getMessage();
        terminal.complain(
                what + (hint.isEmpty() ? "; see " + command.getCommandSpec().qualifiedName() + " --help" : hint));
        return ExitCode.UNUSABLE;
    }

    private static String suggestion(ParameterException e) {
        return e instanceof UnmatchedArgumentException unmatched
                ? unmatched.getSuggestions().stream()
                        .findFirst()
                        .map(name -> "; did you mean " + name + "?")
                        .orElse("")
                : "";
    }

    private int failed(Exception e) {
        if (e instanceof ShowFileException) {
            terminal.complain(String.valueOf(e.getMessage()));
        } else {
            LOG.log(Level.ERROR, "a command failed", e);
            terminal.complain("this went wrong inside the program (" + e + "); the log has the details");
        }
        return ExitCode.UNUSABLE;
    }
}
