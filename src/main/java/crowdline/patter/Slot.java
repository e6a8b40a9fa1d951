package crowdline.patter;

import crowdline.flight.moment.FigureMoments;
import crowdline.show.figure.Quiet;
import crowdline.timing.FigureTime;
import java.util.List;

/**
 * A figure being flown or still ahead, as now expected.
 *
 * @param figureId which figure
 * @param startS when it starts, or started
 * @param endS when it most likely ends, not before its start
 * @param endLowS lower end of the 80 % band of its end, from its start to {@code endS}
 * @param endHighS upper end of the 80 % band of its end, not before {@code endS}
 * @param quiets stretches in it in which nothing is said on purpose, against its start
 * @param moments what there is to see in it, against its start
 */
public record Slot(
        String figureId,
        double startS,
        double endS,
        double endLowS,
        double endHighS,
        List<Quiet> quiets,
        FigureMoments moments) {
    public Slot {
        quiets = List.copyOf(quiets);
        if (!Double.isFinite(startS)
                || !(startS <= endLowS && endLowS <= endS && endS <= endHighS && Double.isFinite(endHighS))) {
            throw new IllegalArgumentException("slot " + figureId + " from " + startS + " s to " + endS
                    + " s with an end between " + endLowS + " and " + endHighS
                    + " s; these must be in the order start, low, end, high");
        }
    }

    /** A figure in which there is nothing to see but that it begins and flies out. */
    public Slot(String figureId, double startS, double endS, double endLowS, double endHighS, List<Quiet> quiets) {
        this(figureId, startS, endS, endLowS, endHighS, quiets, FigureMoments.timed(Math.max(0, endS - startS)));
    }

    /** A figure's time as a slot. */
    public static Slot of(FigureTime time, List<Quiet> quiets) {
        double startS = time.startS();
        return new Slot(
                time.figureId(),
                startS,
                time.endS(),
                startS + time.lowS(),
                startS + time.highS(),
                quiets,
                time.moments());
    }
}
