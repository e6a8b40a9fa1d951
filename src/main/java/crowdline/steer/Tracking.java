package crowdline.steer;

import crowdline.live.now.FigureNow;
import crowdline.sight.SideView.Craft;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the position beyond the state: from readings, if there are any.
 *
 * @param sureness chance that the figure shown is the one being flown, 0 to 1; null without readings
 * @param readingAgeS seconds since the last reading; null if there never was one
 * @param otherName the figure it may be instead, or null
 * @param craft where the aircraft was last read to be, or null
 * @param begins true if the aircraft is seen to wait, and will begin the act
 * @param within how far through its figure it is, or null where nobody is sure
 * @param guesses the figures of the variant that it may be by its position now, the likeliest first; none without readings
 */
public record Tracking(
        @Nullable Double sureness,
        @Nullable Double readingAgeS,
        @Nullable String otherName,
        @Nullable Craft craft,
        boolean begins,
        @Nullable Within within,
        List<Guess> guesses) {
    /** No readings. */
    public static final Tracking NONE = new Tracking(null, null, null, null, false);

    /** What was said of the place in a figure is worth something for so long, seconds. Tuned: a gap of some readings. */
    private static final double WORTH_S = 2;
    /** Less than this is not noticed, seconds. Tuned. */
    private static final double NOTICED_S = 1;

    /**
     * How far through a figure the aircraft is.
     *
     * @param figureIndex its place in the variant, from 0
     * @param share of the figure's expected time, 0 to 1
     * @param atS when, the session's seconds
     */
    public record Within(int figureIndex, double share, double atS) {}

    /**
     * A figure that may be the one being flown.
     *
     * @param figureIndex its place in the variant, from 0
     * @param chance 0 to 1
     */
    public record Guess(int figureIndex, double chance) {}

    public Tracking {
        guesses = List.copyOf(guesses);
    }

    /** Without guesses. */
    public Tracking(
            @Nullable Double sureness,
            @Nullable Double readingAgeS,
            @Nullable String otherName,
            @Nullable Craft craft,
            boolean begins,
            @Nullable Within within) {
        this(sureness, readingAgeS, otherName, craft, begins, within, List.of());
    }

    /** Where nobody is sure how far through its figure it is. */
    public Tracking(
            @Nullable Double sureness,
            @Nullable Double readingAgeS,
            @Nullable String otherName,
            @Nullable Craft craft,
            boolean begins) {
        this(sureness, readingAgeS, otherName, craft, begins, null);
    }

    /**
     * How much later the moments of the figure being flown come than by its clock, seconds; negative for earlier. 0 where
     * that is less than one would notice, so that a plan is not moved by every reading.
     */
    public double behindS(@Nullable FigureNow figure, double nowS) {
        if (figure == null || figure.held()) {
            return 0;
        }
        OptionalDouble inS = inFigureS(figure.index(), nowS, figure.wholeS());
        double behindS = inS.isPresent() ? figure.timeInS() - inS.getAsDouble() : 0;
        return Math.abs(behindS) < NOTICED_S ? 0 : Math.rint(behindS / NOTICED_S) * NOTICED_S;
    }

    /**
     * How far into a figure the aircraft is at a moment, seconds; empty unless that is known of just this figure.
     *
     * @param durationS how long the figure is expected to last
     */
    public OptionalDouble inFigureS(int figureIndex, double nowS, double durationS) {
        Within known = within;
        if (known == null || known.figureIndex() != figureIndex || !(nowS - known.atS() <= WORTH_S)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(known.share() * durationS + Math.max(0, nowS - known.atS()));
    }
}
