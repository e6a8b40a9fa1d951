package crowdline.app;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Where commands print.
 *
 * @param out results
 * @param err one sentence on what went wrong and what to do
 */
record Terminal(PrintStream out, PrintStream err) {

    /** Prints JSON, which is UTF-8 whatever the terminal's own encoding. */
    void json(String json) {
        out.writeBytes(json.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    void line(String text) {
        out.println(text);
    }

    void complain(String sentence) {
        err.println("crowdline: " + sentence);
    }
}
