package crowdline.practice;

/**
 * A stretch of a flight to practise on.
 *
 * @param kind what is flown in it
 * @param figureId the figure of the plan, or the id that was made for it
 * @param name how it is called
 * @param fromS when it begins, seconds of the practice
 * @param toS when it ends
 */
public record Piece(Kind kind, String figureId, String name, double fromS, double toS) {
    /** What is flown. */
    public enum Kind {
        /** A figure of the plan. */
        FIGURE,
        /** The way to one. */
        WAY,
        /** A figure that is not in the plan. */
        UNPLANNED,
        /** Round and round. */
        HOLD,
        /** Out of the display. */
        AWAY
    }

    Piece from(double laterS) {
        return new Piece(kind, figureId, name, fromS + laterS, toS + laterS);
    }

    Piece until(double endS) {
        return new Piece(kind, figureId, name, fromS, endS);
    }
}
