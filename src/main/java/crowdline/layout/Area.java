package crowdline.layout;

import crowdline.measure.Units;
import crowdline.show.Venue;
import org.jspecify.annotations.Nullable;

/**
 * The space an act is laid out in, metres.
 *
 * @param baseM lowest height for figures above the datum
 * @param ceilingM greatest height, or null if none was given
 * @param halfM how far left and right of the datum figures may reach
 * @param spreadM how far left and right figures are put, which is less where the aircraft would fly on for long to use it all
 * @param depthM how far beyond the display line, or null if none was given
 * @param baseGiven whether the director gave the base; otherwise it is only a height to draw at
 * @param halfGiven whether the director gave the length; otherwise it is only a length to draw in
 */
public record Area(
        double baseM,
        @Nullable Double ceilingM,
        double halfM,
        double spreadM,
        @Nullable Double depthM,
        boolean baseGiven,
        boolean halfGiven) {

    /** How long an act flies away from the middle, at most, seconds. A round number of ours. */
    private static final double HALF_S = 12;
    /** The height figures are drawn at where no base was given: so many times the stalling speed in m/s. A number of ours. */
    private static final double BASE_S = 6;

    /**
     * What the director gave; where nothing was given, something to draw in that fits the aircraft and is nobody's limit.
     *
     * @param passMps speed of its level pass, m/s
     * @param stallMps its stalling speed, m/s
     */
    public static Area of(Venue.Limits limits, double passMps, double stallMps) {
        Double base = limits.baseFt();
        Double ceiling = limits.ceilingFt();
        Double half = limits.halfLengthM();
        double fits = Math.rint(HALF_S * passMps / 50) * 50;
        return new Area(
                base != null ? Units.mFromFt(base) : Math.rint(BASE_S * stallMps / 10) * 10,
                ceiling == null ? null : Double.valueOf(Units.mFromFt(ceiling)),
                half != null ? half : fits,
                half != null ? Math.min(half, fits) : fits,
                limits.depthM(),
                base != null,
                half != null);
    }
}
