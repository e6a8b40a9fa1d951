package crowdline.live.event;

import crowdline.measure.Must;

/** The incident page. While it is open everything else stands still. */
public sealed interface IncidentEvent extends LiveEvent {

    /** Something went wrong. */
    record IncidentOpened(double atS) implements IncidentEvent {
        public IncidentOpened {
            Must.beTime("atS", atS);
        }
    }

    /**
     * The incident page is left.
     *
     * @param confirmed true if the commentator was asked and meant it; without that it stays open
     */
    record IncidentClosed(double atS, boolean confirmed) implements IncidentEvent {
        public IncidentClosed {
            Must.beTime("atS", atS);
        }
    }
}
