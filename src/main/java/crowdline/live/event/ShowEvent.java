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

    /** An act will not be flown today. */
    record ActCancelled(double atS, String actId) implements ShowEvent {
        public ActCancelled {
            Must.beTime("atS", atS);
            Must.beSaid("act id", actId);
        }
    }

    /** An act that was cancelled will be flown after all. */
    record ActReinstated(double atS, String actId) implements ShowEvent {
        public ActReinstated {
            Must.beTime("atS", atS);
            Must.beSaid("act id", actId);
        }
    }

    /** The show is over. */
    record ShowEnded(double atS) implements ShowEvent {
        public ShowEnded {
            Must.beTime("atS", atS);
        }
    }
}
