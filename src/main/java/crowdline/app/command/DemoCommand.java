package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.Screen;
import crowdline.app.shell.Terminal;
import crowdline.app.shell.WindowOpener;
import crowdline.flight.Workers;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Opens the demo show, or prints its running sheet where there is no display. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "Opens the invented demo show; with no display, prints its timed running sheet.")
public final class DemoCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Workers workers;
    private final WindowOpener opening;
    private final Folders folders;

    @Mixin
    private final PaceOption pace = new PaceOption();

    public DemoCommand(Terminal terminal, WindowOpener opening, Folders folders, Workers workers) {
        this.workers = workers;
        this.terminal = terminal;
        this.opening = opening;
        this.folders = folders;
    }

    @Override
    public Integer call() throws ShowFileException {
        Path show = folders.demoShow();
        if (!Files.isRegularFile(show)) {
            terminal.complain(
                    "the demo show " + show + " is missing; run scripts/crowdline from a complete copy of the project");
            return ExitCode.UNUSABLE;
        }
        String why = Screen.whyNone();
        if (why == null) {
            return opening.open(show, terminal);
        }
        terminal.line("No window: " + why + ". Here is the demo show's running sheet instead.");
        terminal.line(
                "To get the window, run this on a desktop, or under a virtual one: xvfb-run scripts/crowdline demo");
        terminal.line("");
        new SheetPrinter(terminal, folders, workers).print(show, pace.paces(folders));
        return ExitCode.FINE;
    }
}
