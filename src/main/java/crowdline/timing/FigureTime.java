package crowdline.timing;

import crowdline.flight.moment.FigureMoments;

/**
 * When one figure is flown.
 *
 * @param figureId which figure of the act
 * @param startS start on the act's time scale, seconds
 * @param durationS most likely duration, seconds, above 0
 * @param lowS lower end of the 80 % band of the duration, seconds, above 0 and at most {@code durationS}
 * @param highS upper end of the 80 % band of the duration, seconds, at least {@code durationS}
 * @param moments what there is to see in it; whatever length they were given for, each keeps its share of the duration
 */
public record FigureTime(
        String figureId, double startS, double durationS, double lowS, double highS, FigureMoments moments) {
    public FigureTime {
        if (figureId.isBlank()) {
            throw new IllegalArgumentException("the figure id is empty; it needs some text");
        }
        if (!Double.isFinite(startS)) {
            throw new IllegalArgumentException("startS of " + figureId + " is " + startS + "; it must be a number");
        }
        if (!Double.isFinite(durationS) || durationS <= 0) {
            throw new IllegalArgumentException(
                    "durationS of " + figureId + " is " + durationS + "; it must be above 0");
        }
        if (!(lowS > 0 && lowS <= durationS && highS >= durationS && Double.isFinite(highS))) {
            throw new IllegalArgumentException("the band of " + figureId + " is " + lowS + " to " + highS
                    + "; it must lie above 0 and hold the duration, " + durationS);
        }
        moments = moments.lasting(durationS);
    }

    /** The time of a figure of which nothing is known but that. */
    public FigureTime(String figureId, double startS, double durationS, double lowS, double highS) {
        this(figureId, startS, durationS, lowS, highS, FigureMoments.timed(Math.max(0, durationS)));
    }

    /** The same time with what there is to see in it. */
    public FigureTime with(FigureMoments seen) {
        return new FigureTime(figureId, startS, durationS, lowS, highS, seen);
    }

    /** When the figure most likely ends, seconds on the act's time scale. */
    public double endS() {
        return startS + durationS;
    }

    /** The same figure, begun at another time. */
    public FigureTime startingAt(double newStartS) {
        return new FigureTime(figureId, newStartS, durationS, lowS, highS, moments);
    }
}
