package crowdline.timing;

import java.time.Instant;
import java.util.List;

/**
 * One timed run of an act.
 *
 * @param id its own name among the passes of a show, never used again
 * @param actId which act
 * @param variant which variant of it
 * @param how how it was timed
 * @param begunAt when it began, only shown
 * @param note what somebody wanted to remember about it; may be empty
 * @param figures those that were timed, in the order flown; a figure may be missing or come twice
 * @param counts whether durations are learned from it
 */
public record Pass(
        String id,
        String actId,
        String variant,
        How how,
        Instant begunAt,
        String note,
        List<TimedFigure> figures,
        boolean counts) {

    /** How a pass was timed. */
    public enum How {
        /** Walked on the ground, with a key at every figure: an order and a rhythm, no flying time to learn from. */
        WALKED,
        /** Flown, with a key at every figure. */
        BY_HAND,
        /** Flown, and found in a flight log. */
        BY_LOG,
        /** Flown in a show run live. */
        LIVE
    }

    /**
     * One figure of a pass.
     *
     * @param figureId which figure of the act
     * @param startS seconds since the pass began
     * @param endS seconds since the pass began, after {@code startS}
     */
    public record TimedFigure(String figureId, double startS, double endS) {
        public TimedFigure {
            if (!Double.isFinite(startS) || !Double.isFinite(endS) || !(endS > startS)) {
                throw new IllegalArgumentException("figure " + figureId + " lasts from " + startS + " to " + endS
                        + " s; its end must be after its start");
            }
        }

        public double durationS() {
            return endS - startS;
        }
    }

    public Pass {
        figures = List.copyOf(figures);
        if (id.isBlank()) {
            throw new IllegalArgumentException("the pass has no id; it needs one");
        }
    }

    /** The same pass, learned from or not. */
    public Pass counting(boolean itCounts) {
        return new Pass(id, actId, variant, how, begunAt, note, figures, itCounts);
    }

    /** The same pass with another note. */
    public Pass withNote(String newNote) {
        return new Pass(id, actId, variant, how, begunAt, newNote, figures, counts);
    }
}
