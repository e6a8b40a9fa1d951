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
 * @param markErrorS standard deviation of the moment of each start and end, seconds, 0 or more
 */
public record Pass(
        String id,
        String actId,
        String variant,
        How how,
        Instant begunAt,
        String note,
        List<TimedFigure> figures,
        boolean counts,
        double markErrorS) {

    /**
     * Standard deviation of a boundary between figures that was found in a flight log, seconds. Normal errors that are
     * within 0.2 s in the median, as the follower has to reach, have 0.2 / 0.6745.
     */
    public static final double LOG_MARK_ERROR_S = 0.3;

    /** Files keep thousandths of a second; no two flights agree in all figures to some of them. */
    private static final double SAME_MOMENT_S = 0.005;

    /** How a pass was timed. */
    public enum How {
        /** Walked on the ground, with a key at every figure: an order and a rhythm, no flying time to learn from. */
        WALKED,
        /** Flown, with a key at every figure. */
        BY_HAND,
        /** Flown, and found in a flight log. */
        BY_LOG,
        /** Flown in a show run live. */
        LIVE;

        /** Standard deviation of the moment of a mark made in this way, seconds, if nothing better is known of it. */
        public double markErrorS() {
            return this == BY_LOG ? LOG_MARK_ERROR_S : DurationBelief.MARK_ERROR_S;
        }

        /** Whether such a pass says how long flying takes. */
        public boolean isFlown() {
            return this != WALKED;
        }
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
        if (!(markErrorS >= 0) || !Double.isFinite(markErrorS)) {
            throw new IllegalArgumentException(
                    "markErrorS of pass " + id + " is " + markErrorS + "; it must be 0 or more");
        }
    }

    /** A pass that counts and carries no note, with the error usual for how it was timed. */
    public static Pass of(
            String id, String actId, String variant, How how, Instant begunAt, List<TimedFigure> figures) {
        return new Pass(id, actId, variant, how, begunAt, "", figures, true, how.markErrorS());
    }

    /** The same pass with another error of its marks, such as the one the reader of a log gives for itself. */
    public Pass withMarkErrorS(double errorS) {
        return new Pass(id, actId, variant, how, begunAt, note, figures, counts, errorS);
    }

    /** The same pass on a scale on which its first figure starts at 0, as from the times of a log. */
    public Pass fromZero() {
        if (figures.isEmpty()) {
            return this;
        }
        double zeroS = figures.get(0).startS();
        List<TimedFigure> moved = figures.stream()
                .map(f -> new TimedFigure(f.figureId(), f.startS() - zeroS, f.endS() - zeroS))
                .toList();
        return new Pass(id, actId, variant, how, begunAt, note, moved, counts, markErrorS);
    }

    /** Whether it was a run of this variant of this act. */
    public boolean isOf(String act, String variantName) {
        return actId.equals(act) && variant.equals(variantName);
    }

    /** Whether it tells of the very same run: the same figures at the same moments, whoever kept it and when. */
    public boolean isSameRun(Pass other) {
        if (!isOf(other.actId, other.variant) || how != other.how || figures.size() != other.figures.size()) {
            return false;
        }
        for (int i = 0; i < figures.size(); i++) {
            TimedFigure mine = figures.get(i);
            TimedFigure its = other.figures.get(i);
            boolean same = mine.figureId().equals(its.figureId())
                    && Math.abs(mine.startS() - its.startS()) <= SAME_MOMENT_S
                    && Math.abs(mine.endS() - its.endS()) <= SAME_MOMENT_S;
            if (!same) {
                return false;
            }
        }
        return true;
    }

    /** Whether durations are learned from it: it counts, and it was flown. */
    public boolean teaches() {
        return counts && how.isFlown();
    }

    /** Standard deviation of the duration of one of its figures, seconds: that of two marks. */
    public double durationErrorS() {
        return markErrorS * Math.sqrt(2);
    }

    /** The same pass, learned from or not. */
    public Pass counting(boolean itCounts) {
        return new Pass(id, actId, variant, how, begunAt, note, figures, itCounts, markErrorS);
    }

    /** The same pass with another note. */
    public Pass withNote(String newNote) {
        return new Pass(id, actId, variant, how, begunAt, newNote, figures, counts, markErrorS);
    }
}
