package crowdline.timing;

/**
 * What is believed about how long a figure takes: a {@link NormalBelief} about the logarithm of its duration, so that no
 * duration is ever below 0 and errors are in proportion. It starts from the predicted duration and the spread found by
 * varying the prediction, and learns from passes.
 *
 * @param logSeconds belief about the natural logarithm of the duration in seconds
 */
public record DurationBelief(NormalBelief logSeconds) {
    /**
     * Standard deviation of the moment at which somebody marks by hand what they see, seconds. From the simple reaction
     * time to something seen, 0.231 s over 1,469 people (D. L. Woods et al., "Factors influencing the latency of simple
     * reaction time", Frontiers in Human Neuroscience 9:131, 2015). The whole of it is taken as uncertainty, since a
     * mark that was expected comes with no delay and one that was not comes with all of it.
     */
    public static final double MARK_ERROR_S = 0.25;

    /**
     * How many passes the prediction is worth. A design choice: after three passes the pilot's own rhythm has three
     * quarters of the say.
     */
    public static final double PREDICTION_WEIGHT = 1;

    /** How many passes the predicted spread is worth. A design choice: spread is learned more slowly than rhythm. */
    public static final double PREDICTION_FREEDOM = 4;

    /**
     * Smallest spread of the logarithm that is believed of a prediction: 5 %, the size of everyday differences between
     * one flight and the next. Common practice, no source.
     */
    public static final double LEAST_LOG_SPREAD = 0.05;

    /**
     * The belief before any pass.
     *
     * @param predictedS predicted duration, seconds, above 0
     * @param logSpread standard deviation of the logarithm of the duration from varying the prediction, 0 or more; below
     *     {@link #LEAST_LOG_SPREAD} that is taken
     */
    public static DurationBelief fromPrediction(double predictedS, double logSpread) {
        mustBeDuration("the predicted duration", predictedS);
        if (!(logSpread >= 0) || !Double.isFinite(logSpread)) {
            throw new IllegalArgumentException("logSpread is " + logSpread + "; it must be 0 or more");
        }
        return new DurationBelief(NormalBelief.guess(
                Math.log(predictedS), PREDICTION_WEIGHT, Math.max(logSpread, LEAST_LOG_SPREAD), PREDICTION_FREEDOM));
    }

    /**
     * This belief after a pass. Timed with an error, it counts for less than one in the proportion of the figure's
     * own variance to that variance and the error's together, both on the logarithm: an approximation that keeps the
     * belief in its family, exact for the centre when the figure's variance is known.
     *
     * @param observedS timed duration, seconds, above 0
     * @param errorS standard deviation of the timing, seconds, 0 or more
     */
    public DurationBelief update(double observedS, double errorS) {
        mustBeDuration("the observed duration", observedS);
        if (!(errorS >= 0) || !Double.isFinite(errorS)) {
            throw new IllegalArgumentException("errorS is " + errorS + "; it must be 0 or more");
        }
        double own = Math.pow(logSeconds.standardDeviation(), 2);
        double timing = Math.pow(errorS / observedS, 2);
        return new DurationBelief(logSeconds.update(Math.log(observedS), own / (own + timing)));
    }

    /** Median of the next duration, seconds. */
    public double medianS() {
        return Math.exp(logSeconds.mean());
    }

    /**
     * The band of the next duration, seconds.
     *
     * @param level chance that the next duration lies inside, above 0 and below 1
     */
    public Band bandS(double level) {
        Band band = logSeconds.predict(level);
        return new Band(Math.exp(band.low()), Math.exp(band.high()));
    }

    /** The figure begun at a time, with its median and the band that is shown. */
    public FigureTime figureTime(String figureId, double startS) {
        Band band = bandS(Band.SHOWN_LEVEL);
        return new FigureTime(figureId, startS, medianS(), band.low(), band.high());
    }

    private static void mustBeDuration(String what, double seconds) {
        if (!Double.isFinite(seconds) || seconds <= 0) {
            throw new IllegalArgumentException(what + " is " + seconds + " s; it must be above 0");
        }
    }
}
