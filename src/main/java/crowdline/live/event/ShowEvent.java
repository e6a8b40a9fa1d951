package crowdline.live.event;

import crowdline.measure.Must;
import java.util.List;

/** What happens to the day's running order. */
public sealed interface ShowEvent extends LiveEvent {

    /** A show was opened, or opened again after its file was changed; what was flown and said stays. */
    record ShowOpened(double atS, String title, List<String> actIds) implements ShowEvent {
        public ShowOpened {
            Must.beTime("atS", atS);
            Must.beSaid("show title", title);
            actIds = List.copyOf(actIds);
        }
    }

    /** The show is over. */
    record ShowEnded(double atS) implements ShowEvent {
        public ShowEnded {
            Must.beTime("atS", atS);
        }
    }
}
