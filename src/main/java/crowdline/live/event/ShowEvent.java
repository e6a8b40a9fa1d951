package crowdline.live.event;

import crowdline.measure.Must;
import java.util.List;
import org.jspecify.annotations.Nullable;

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

    /**
     * Slots begin later than planned, or earlier.
     *
     * @param actIds of one act, or of all from one on
     * @param byS how much later than so far, seconds; negative for earlier
     */
    record ActsMoved(double atS, List<String> actIds, double byS) implements ShowEvent {
        public ActsMoved {
            Must.beTime("atS", atS);
            Must.beFinite("byS", byS);
            actIds = List.copyOf(actIds);
        }
    }

    /**
     * Two acts are flown in each other's place.
     *
     * @param firstId the one that was to come first
     * @param firstByS how much later its slot begins than so far, seconds
     * @param secondByS how much later that of the other begins, seconds; most often negative
     */
    record ActsSwapped(double atS, String firstId, String secondId, double firstByS, double secondByS)
            implements ShowEvent {
        public ActsSwapped {
            Must.beTime("atS", atS);
            Must.beSaid("act id", firstId);
            Must.beSaid("act id", secondId);
            Must.beFinite("firstByS", firstByS);
            Must.beFinite("secondByS", secondByS);
        }
    }

    /** An act will not be flown. */
    record ActCancelled(double atS, String actId) implements ShowEvent {
        public ActCancelled {
            Must.beTime("atS", atS);
            Must.beSaid("act id", actId);
        }
    }

    /** An act that was cancelled will be flown after all. */
    record ActRestored(double atS, String actId) implements ShowEvent {
        public ActRestored {
            Must.beTime("atS", atS);
            Must.beSaid("act id", actId);
        }
    }

    /**
     * An act is put in that nobody planned.
     *
     * @param actId unlike any other's
     * @param title what it is called
     * @param minutes how long it takes, above 0, {@link #MOST_MINUTES} at most
     * @param afterId the act it comes after, or null if it comes first
     */
    record ActAdded(
            double atS,
            String actId,
            String title,
            double minutes,
            @Nullable String afterId) implements ShowEvent {
        /** It becomes one figure, and in a show no figure lasts longer. */
        public static final double MOST_MINUTES = 120;

        public ActAdded {
            Must.beTime("atS", atS);
            Must.beSaid("act id", actId);
            Must.beSaid("act title", title);
            Must.beWithin("minutes", minutes, 0.01, MOST_MINUTES);
        }
    }

    /** The show is over. */
    record ShowEnded(double atS) implements ShowEvent {
        public ShowEnded {
            Must.beTime("atS", atS);
        }
    }
}
