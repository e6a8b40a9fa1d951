package crowdline.speech.hear;

/**
 * Something that was said, from its first sound to its last.
 *
 * @param startS when it began, seconds of sound since listening began
 * @param endS when it ended, likewise; after {@code startS}
 */
public record Utterance(double startS, double endS) {
    public Utterance {
        if (!(startS >= 0 && endS > startS && endS < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("speech from " + startS + " s to " + endS
                    + " s; it must begin at 0 or later and end after it began");
        }
    }

    public double seconds() {
        return endS - startS;
    }
}
