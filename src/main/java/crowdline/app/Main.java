package crowdline.app;

import crowdline.app.shell.Folders;
import crowdline.app.shell.Terminal;
import crowdline.app.shell.WindowOpener;
import crowdline.app.window.ConsoleOpener;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /** Runs the program; see {@code crowdline --help}. */
    public static void main(String[] args) {
        int code = run(args, new Terminal(System.out, System.err), new ConsoleOpener(Folders.here()));
        if (code != WindowOpener.STAYS_OPEN) {
            System.exit(code);
        }
    }

    /** Without commands and options the window opens at once, and the command parser is never loaded. */
    public static int run(String[] args, Terminal terminal, WindowOpener opening) {
        if (args.length == 0) {
            return opening.open(null, terminal);
        }
        if (args.length == 1 && isFile(args[0])) {
            return opening.open(Path.of(args[0]), terminal);
        }
        return Commands.run(args, terminal, opening);
    }

    private static boolean isFile(String name) {
        try {
            return Files.isRegularFile(Path.of(name));
        } catch (InvalidPathException e) {
            return false;
        }
    }
}
