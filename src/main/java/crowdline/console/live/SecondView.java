package crowdline.console.live;

import crowdline.console.paint.Mark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a co-commentator or interpreter sees of a moment.
 *
 * @param live what is flown and said
 * @param turn who speaks next
 * @param then what is said after it, with how long until then; empty if nobody knows
 * @param speakers the names of who may sit before the window
 * @param reader the one of them who does, or null if nobody has said
 */
public record SecondView(
        LiveView live,
        Mark turn,
        String then,
        List<String> speakers,
        @Nullable String reader) {
    public SecondView {
        speakers = List.copyOf(speakers);
    }
}
