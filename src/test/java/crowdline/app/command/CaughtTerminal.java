package crowdline.app.command;

import crowdline.app.shell.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** A terminal that keeps what is printed on it, as UTF-8. */
public final class CaughtTerminal {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Terminal terminal = new Terminal(
            new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));

    public Terminal terminal() {
        return terminal;
    }

    public String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    public String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    /** Forgets what was printed so far. */
    void clear() {
        out.reset();
        err.reset();
    }
}
