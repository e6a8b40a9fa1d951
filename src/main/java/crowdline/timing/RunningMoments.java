package crowdline.timing;

/**
 * Count, mean and spread of numbers seen one at a time, without keeping them.
 *
 * <p>The update is B. P. Welford's ("Note on a method for calculating corrected sums of squares and products",
 * Technometrics 4(3), 1962): it subtracts the running mean before it squares, so it keeps its digits where a sum of
 * squares would lose them.
 *
 * @param count how many numbers
 * @param mean their mean, 0 if there is none
 * @param sumOfSquares sum of squared deviations from the mean
 */
public record RunningMoments(long count, double mean, double sumOfSquares) {
    /** Nothing seen yet. */
    public static final RunningMoments NONE = new RunningMoments(0, 0, 0);

    /** These moments with one more number. */
    public RunningMoments with(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the value is " + value + "; it must be a number");
        }
        long newCount = count + 1;
        double deviation = value - mean;
        double newMean = mean + deviation / newCount;
        return new RunningMoments(newCount, newMean, sumOfSquares + deviation * (value - newMean));
    }

    /** Standard deviation with {@code count − 1} below the line; 0 for fewer than two numbers. */
    public double standardDeviation() {
        return count < 2 ? 0 : Math.sqrt(sumOfSquares / (count - 1));
    }
}
