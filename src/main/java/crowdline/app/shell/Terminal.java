package crowdline.app.shell;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Where commands print.
 *
 * @param out results
 * @param err one sentence on what went wrong and what to do
 */
public record Terminal(PrintStream out, PrintStream err) {

    /** Prints JSON, which is UTF-8 whatever the terminal's own encoding. */
    public void json(String json) {
        out.writeBytes(json.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    public void line(String text) {
        out.println(text);
    }

    public void complain(String sentence) {
        err.println("crowdline: " + sentence);
    }
}
