package crowdline.live.event;

import crowdline.measure.Must;

/** What the microphone tells of the commentator, where it was chosen to listen. Sound itself is never kept. */
public sealed interface HeardEvent extends LiveEvent {

    /** From now on talk and quiet are measured. */
    record ListeningBegan(double atS) implements HeardEvent {
        public ListeningBegan {
            Must.beTime("atS", atS);
        }
    }

    /** From now on they are not: it was turned off, or the microphone is gone. */
    record ListeningEnded(double atS) implements HeardEvent {
        public ListeningEnded {
            Must.beTime("atS", atS);
        }
    }

    /**
     * Somebody spoke into the microphone.
     *
     * @param atS when that was known to be over
     * @param fromS when it began, 0 or more, on the session's scale
     * @param toS when it ended, not before {@code fromS}
     */
    record TalkHeard(double atS, double fromS, double toS) implements HeardEvent {
        public TalkHeard {
            Must.beTime("atS", atS);
            Must.beTime("fromS", fromS);
            Must.beAtLeast("toS", toS, fromS);
        }
    }
}
