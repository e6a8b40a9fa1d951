package crowdline.speech.pace;

/**
 * How long a text takes to say, with the band that 80 % of readings fall in.
 *
 * @param seconds the middle of the band, 0 or more
 * @param lowS its lower end, between 0 and {@code seconds}
 * @param highS its upper end, {@code seconds} or more
 */
public record SpokenTime(double seconds, double lowS, double highS) {

    /** Nothing to say. */
    public static final SpokenTime NONE = new SpokenTime(0, 0, 0);

    public SpokenTime {
        if (!(lowS >= 0 && lowS <= seconds && seconds <= highS && highS < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a spoken time needs 0 <= low <= seconds <= high, but got low " + lowS
                    + ", seconds " + seconds + ", high " + highS);
        }
    }

    /** The longer of two at the same time. */
    public SpokenTime longer(SpokenTime beside) {
        return new SpokenTime(
                Math.max(seconds, beside.seconds), Math.max(lowS, beside.lowS), Math.max(highS, beside.highS));
    }

    /**
     * One remark after another. The errors of separate remarks are nearly independent (a reader who varies by 11 % on
     * one sentence varies by 3 % on a paragraph: Altpeter and others 2015, doi 10.1007/s00417-015-3065-4), so the
     * half-bands add as squares.
     *
     * @return the time for both, without any breath between them
     */
    public SpokenTime plus(SpokenTime next) {
        double sum = seconds + next.seconds;
        double below = Math.hypot(seconds - lowS, next.seconds - next.lowS);
        double above = Math.hypot(highS - seconds, next.highS - next.seconds);
        return new SpokenTime(sum, Math.max(0, sum - below), sum + above);
    }
}
