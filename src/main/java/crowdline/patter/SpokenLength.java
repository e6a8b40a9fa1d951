package crowdline.patter;

/**
 * How long something takes to say.
 *
 * @param seconds most likely, above 0
 * @param lowS lower end of the 80 % band, above 0 and at most {@code seconds}
 * @param highS upper end of the 80 % band, at least {@code seconds}
 */
public record SpokenLength(double seconds, double lowS, double highS) {
    public SpokenLength {
        if (!(lowS > 0 && seconds >= lowS && highS >= seconds && Double.isFinite(highS))) {
            throw new IllegalArgumentException("spoken length " + seconds + " s with band " + lowS + " to " + highS
                    + "; it must be above 0 and lie in its band");
        }
    }

    /** A length known for certain. */
    public static SpokenLength of(double seconds) {
        return new SpokenLength(seconds, seconds, seconds);
    }
}
