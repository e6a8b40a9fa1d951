package crowdline.app.window;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.MonotonicTicker;
import crowdline.app.shell.Screen;
import crowdline.app.shell.Terminal;
import crowdline.app.shell.WindowOpener;
import crowdline.app.window.second.WatchingWindow;
import crowdline.app.window.show.OpeningMessages;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Opens the console window, where there is a screen for it. */
public final class ConsoleOpener implements WindowOpener {
    private final Folders folders;

    public ConsoleOpener(Folders folders) {
        this.folders = folders;
    }

    @Override
    public int open(@Nullable Path show, Terminal terminal) {
        return open(show, Devices.NONE, terminal);
    }

    @Override
    public int watch(Path show, Terminal terminal) {
        String why = Screen.whyNone();
        if (why != null) {
            terminal.complain(why + ", so the second window cannot open; start it where there is a screen");
            return ExitCode.UNUSABLE;
        }
        try {
            new WatchingWindow(folders, show, JournalMachine.here(new MonotonicTicker())).open();
            return STAYS_OPEN;
        } catch (ShowFileException e) {
            terminal.complain(String.valueOf(e.getMessage()));
            return ExitCode.UNUSABLE;
        }
    }

    @Override
    public int open(@Nullable Path show, Devices devices, Terminal terminal) {
        String why = Screen.whyNone();
        if (why != null) {
            terminal.complain(why + ", so the window cannot open; start it where there is a screen, or see crowdline"
                    + " --help for what works without one");
            return ExitCode.UNUSABLE;
        }
        ConsoleWiring console = new ConsoleWiring(folders, JournalMachine.here(new MonotonicTicker()));
        // The root of every thread that has no better one, the event thread among them.
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, fault) -> console.opening().say(OpeningMessages.faultIn(thread, fault)));
        console.open(show, devices);
        return STAYS_OPEN;
    }
}
