package crowdline.trace;

import java.util.List;

/**
 * One thing that was found in a flight.
 *
 * @param what what it is
 * @param startS on the scale of the readings
 * @param endS on the scale of the readings
 * @param guesses of the catalogue, the likeliest first; none but for a figure
 */
public record Found(What what, double startS, double endS, List<Guess> guesses) {
    /** What it is. */
    public enum What {
        /** A figure of the catalogue. */
        FIGURE,
        /** A level line, perhaps with rolls, which leave no trace. */
        LINE,
        /** Level turns: a way from one figure to the next. */
        WAY,
        /** Nothing that the catalogue has. */
        UNKNOWN
    }

    /**
     * A figure it may be.
     *
     * @param name the catalogue's
     * @param sure how sure, 0 to 1
     */
    public record Guess(String name, double sure) {}

    public Found {
        guesses = List.copyOf(guesses);
    }

    /** How long it took, seconds. */
    public double seconds() {
        return endS - startS;
    }
}
