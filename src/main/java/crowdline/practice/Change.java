package crowdline.practice;

import java.util.List;

/**
 * One thing in which a flight does not keep to the plan.
 *
 * @param kind what it is
 * @param figureIds the figures it is about; for two that are swapped the one flown first comes first
 * @param name how the figure is called, or both; empty where it is about none
 * @param seenS when somebody who looks at the sky can first see it, seconds of the practice
 */
public record Change(Kind kind, List<String> figureIds, String name, double seenS) {
    public Change {
        figureIds = List.copyOf(figureIds);
    }

    /** The ways in which a flight does not keep to the plan. */
    public enum Kind {
        /** It begins after its time. */
        LATE,
        /** It begins before its time. */
        EARLY,
        /** The air is rough, and no figure takes the time it should. */
        GUSTY,
        /** A figure is left out. */
        DROPPED,
        /** Two figures change places. */
        SWAPPED,
        /** A figure is flown that is not in the plan. */
        UNPLANNED,
        /** The aircraft circles and waits. */
        HOLD,
        /** The pilot leaves a figure in its middle and does not come back. */
        BREAK_OFF,
        /** The aircraft goes down out of sight. */
        INCIDENT;

        /** Whether it changes which figures are flown and when the act is over, not only how long they take. */
        public boolean breaksThePlan() {
            return this != LATE && this != EARLY && this != GUSTY;
        }
    }
}
