package crowdline.timing;

import crowdline.measure.Must;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * What is believed about normally distributed values whose mean and variance are both unknown: the conjugate
 * normal-inverse-gamma family in the form of P. D. Hoff, A First Course in Bayesian Statistical Methods (Springer 2009),
 * section 5.3. The next value then follows a Student t with {@code freedom} degrees of freedom about {@code mean}, with
 * squared scale {@code (sumOfSquares / freedom) (1 + 1 / weight)}.
 *
 * @param mean centre of the belief
 * @param weight how many values the centre is worth, 0 or more
 * @param freedom how many values the spread is worth; −1 with a weight of 0 is complete ignorance, after which n values
 *     give the classical interval with n − 1 degrees of freedom
 * @param sumOfSquares spread of that many values about the centre, 0 or more
 */
public record NormalBelief(double mean, double weight, double freedom, double sumOfSquares) {
    /** Knows nothing; two values make it predict. */
    public static final NormalBelief NOTHING = new NormalBelief(0, 0, -1, 0);

    public NormalBelief {
        Must.beFinite("the mean", mean);
        if (!(weight >= 0) || !(freedom >= -1) || !(sumOfSquares >= 0) || !Double.isFinite(sumOfSquares)) {
            throw new IllegalArgumentException("weight " + weight + ", freedom " + freedom + " and sum of squares "
                    + sumOfSquares + " must be at least 0, −1 and 0");
        }
    }

    /**
     * A belief from a guessed centre and standard deviation.
     *
     * @param mean guessed centre
     * @param weight how many values the centre is worth, above 0
     * @param standardDeviation guessed standard deviation of one value, above 0
     * @param freedom how many values that guess is worth, above 0
     */
    public static NormalBelief guess(double mean, double weight, double standardDeviation, double freedom) {
        return new NormalBelief(mean, weight, freedom, freedom * standardDeviation * standardDeviation);
    }

    /** This belief after one more value. */
    public NormalBelief update(double value) {
        return update(value, 1);
    }

    /**
     * This belief after a value that counts for less than one.
     *
     * @param value the value
     * @param share how much it counts, above 0 and at most 1
     */
    public NormalBelief update(double value, double share) {
        Must.beFinite("the value", value);
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("the share is " + share + "; it must be above 0 and at most 1");
        }
        double newWeight = weight + share;
        double deviation = value - mean;
        return new NormalBelief(
                mean + share * deviation / newWeight,
                newWeight,
                freedom + share,
                sumOfSquares + share * weight / newWeight * deviation * deviation);
    }

    /** True once the belief is enough to say where the next value falls. */
    public boolean predicts() {
        return weight > 0 && freedom > 0 && sumOfSquares > 0;
    }

    /** The belief's own standard deviation of one value. */
    public double standardDeviation() {
        return freedom > 0 ? Math.sqrt(sumOfSquares / freedom) : Double.NaN;
    }

    /**
     * The value below which the next one falls with a given chance.
     *
     * @param chance above 0 and below 1
     * @throws IllegalStateException if too little is known to say, see {@link #predicts()}
     */
    public double quantile(double chance) {
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException("the chance is " + chance + "; it must be above 0 and below 1");
        }
        if (!predicts()) {
            throw new IllegalStateException("too little is known to predict: weight " + weight + ", freedom " + freedom
                    + "; give a guess first or more values");
        }
        double scale = standardDeviation() * Math.sqrt(1 + 1 / weight);
        return mean + scale * TDistribution.of(freedom).inverseCumulativeProbability(chance);
    }

    /**
     * The central interval that holds the next value with a given chance.
     *
     * @param level above 0 and below 1, such as {@link Band#SHOWN_LEVEL}
     */
    public Band predict(double level) {
        double tail = (1 - level) / 2;
        return new Band(quantile(tail), quantile(1 - tail));
    }
}
