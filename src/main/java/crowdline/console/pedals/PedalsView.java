package crowdline.console.pedals;

import crowdline.console.keys.Command;
import crowdline.console.paint.Mark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the window of pedals and remotes shows.
 *
 * @param rows one for each command
 * @param said what to do, or what was just heard
 * @param learning the command a button is being learned for, or null
 * @param asks whether a button may be taken from another command, which waits for a yes
 */
record PedalsView(List<Row> rows, Mark said, @Nullable Command learning, boolean asks) {
    PedalsView {
        rows = List.copyOf(rows);
    }

    /**
     * A command and what gives it.
     *
     * @param pedals learned signals in words, or "–"
     * @param keys learned keys in words, or "–"
     * @param always the keys it has by itself
     */
    record Row(Command command, String pedals, String keys, String always) {}
}
