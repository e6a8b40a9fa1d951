package crowdline.flight.leg;

/**
 * How wide a loop is on its way round: R (1 + a cos φ + c cos 3φ) / (1 + a + c), where φ is the angle from the bottom. It
 * is R at the bottom and s R at the top.
 *
 * <p>The part in 3φ lets a loop be tighter at the top and still end where it began; there is only so much of it before
 * the loop looks like a clover leaf. An aircraft that has no speed left for that flies the part in φ, which is an egg on
 * its way: each time round it moves on by 2π a R / (2 (1 + a + c)).
 *
 * <p>Everything is asked by the cosine of φ, the part upwards of the way to the centre.
 */
public record LoopShape(double a, double c) {
    /** Down to this a loop is tightened without moving on. */
    public static final double CLOSES_DOWN_TO = 0.8;

    private static final double MOST_C = (1 - CLOSES_DOWN_TO) / (1 + CLOSES_DOWN_TO);
    /** Where nothing of it is left. */
    private static final double ALL_EGG = 0.3;

    /**
     * A loop of another width at its top.
     *
     * @param topShare s, how wide at the top as a share of how wide at the bottom, above 0 to 1
     */
    public static LoopShape ofTop(double topShare) {
        double both = (1 - topShare) / (1 + topShare);
        double fading = MOST_C * (topShare - ALL_EGG) / (CLOSES_DOWN_TO - ALL_EGG);
        double c = Math.max(Math.min(both, fading), 0);
        return new LoopShape(both - c, c);
    }

    /** Radius as a share of the one at the bottom. */
    double radius(double upwards) {
        double u = upwards;
        return (1 + a * u + c * u * (4 * u * u - 3)) / (1 + a + c);
    }

    /** How far the path falls from there to the bottom, as a share of the radius at the bottom. */
    public double fall(double upwards) {
        return height(1) - height(upwards);
    }

    /** The integral of the radius over the cosine. */
    private double height(double u) {
        return (u + a * u * u / 2 + c * u * u * (u * u - 1.5)) / (1 + a + c);
    }
}
