package crowdline.flight.leg;

/**
 * How wide a loop is on its way round: R (1 + a cos φ + b cos 2φ + c cos 3φ) / (1 + a + b + c), where φ is the angle from
 * the bottom. It is R at the bottom and s R at the top.
 *
 * <p>The parts in 2φ and 3φ leave it ending where it began. That in 2φ makes it wider than high: the pull is tightened on
 * the way up, eased over the top, where there is little speed to bend with, and tightened again on the way down. There is
 * only so much of both before it no longer looks round. An aircraft that has no speed left for that flies the part in φ,
 * which is an egg on its way: each time round it moves on by π a R / (1 + a + b + c).
 *
 * <p>Everything is asked by the cosine of φ, the part upwards of the way to the centre.
 */
public record LoopShape(double a, double b, double c) {
    /** Down to this a loop ends where it began. */
    public static final double CLOSES_DOWN_TO = 0.8;
    /** Down to this it is also within a tenth of round. */
    public static final double ROUND_DOWN_TO = 0.85;

    /** How much wider than high for how much tighter at the top: takes the least load of what is within a tenth of round. */
    private static final double WIDER = 1.7;
    /** Where nothing of that is left, and where nothing of the part in 3φ. */
    private static final double NOT_WIDER = 0.7;

    private static final double ALL_EGG = 0.3;

    /**
     * A loop of another width at its top.
     *
     * @param topShare s, how wide at the top as a share of how wide at the bottom, above 0 to 1
     */
    public static LoopShape ofTop(double topShare) {
        double b = WIDER * (1 - Math.max(topShare, CLOSES_DOWN_TO)) * fading(topShare, NOT_WIDER);
        double both = (1 + b) * (1 - topShare) / (1 + topShare);
        double most = (1 + b) * (1 - CLOSES_DOWN_TO) / (1 + CLOSES_DOWN_TO);
        double c = Math.min(both, most * fading(topShare, ALL_EGG));
        return new LoopShape(both - c, b, c);
    }

    /** 1 for a loop that closes, 0 where nothing is left. */
    private static double fading(double topShare, double nothingAt) {
        return Math.max(0, Math.min((topShare - nothingAt) / (CLOSES_DOWN_TO - nothingAt), 1));
    }

    /** Radius as a share of the one at the bottom. */
    public double radius(double upwards) {
        double u = upwards;
        return (1 + a * u + b * (2 * u * u - 1) + c * u * (4 * u * u - 3)) / (1 + a + b + c);
    }

    /** How far along it comes in the quarter before its top, or after it, as a share of the radius at the bottom. */
    public double topQuarter() {
        return (1 - a * Math.PI / 4 + b / 3) / (1 + a + b + c);
    }

    /** How far the path falls from there to the bottom, as a share of the radius at the bottom. */
    public double fall(double upwards) {
        return height(1) - height(upwards);
    }

    /** The integral of the radius over the cosine. */
    private double height(double u) {
        double square = u * u;
        return (u + a * square / 2 + b * u * (2 * square / 3 - 1) + c * square * (square - 1.5)) / (1 + a + b + c);
    }
}
