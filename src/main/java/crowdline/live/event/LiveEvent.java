package crowdline.live.event;

import crowdline.measure.Must;

/** Something that happened in the running show. Whether it is possible is for {@link crowdline.live.state.Live} to say. */
public sealed interface LiveEvent
        permits ShowEvent,
                FlightEvent,
                TalkEvent,
                IncidentEvent,
                AnnouncementEvent,
                HeardEvent,
                LiveEvent.HandedOver,
                LiveEvent.NoteMade,
                LiveEvent.NoteWritten,
                LiveEvent.Undone {

    /** When it happened, in seconds on the session's monotonic scale, 0 or more. */
    double atS();

    /**
     * The commentator wants to come back to this moment.
     *
     * @param text what was written down; empty if only the time was noted
     */
    record NoteMade(double atS, String text) implements LiveEvent {
        public NoteMade {
            Must.beTime("atS", atS);
        }
    }

    /** The words of the newest note, which were finished only now. */
    record NoteWritten(double atS, String text) implements LiveEvent {
        public NoteWritten {
            Must.beTime("atS", atS);
            Must.beSaid("note text", text);
        }
    }

    /**
     * Who speaks next was settled.
     *
     * @param toOther true if it is the co-commentator or interpreter, who sees it in the second window
     */
    record HandedOver(double atS, boolean toOther) implements LiveEvent {
        public HandedOver {
            Must.beTime("atS", atS);
        }
    }

    /** The last thing done by hand is taken back; {@link crowdline.live.state.LiveState#takeBack()} is what that is. */
    record Undone(double atS) implements LiveEvent {
        public Undone {
            Must.beTime("atS", atS);
        }
    }
}
