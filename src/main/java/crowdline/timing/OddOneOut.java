package crowdline.timing;

import java.util.List;

/**
 * Finds durations that are unlike the others: by the modified z-score of B. Iglewicz and D. C. Hoaglin, How to Detect and
 * Handle Outliers (ASQC Quality Press 1993), section 3.3, with their limit of 3.5, on the logarithm of the duration. It is
 * for a person to look at; nothing is left out of what is learned by it alone.
 */
final class OddOneOut {
    /** Of three durations at least, two can agree against one. */
    static final int FEWEST = 3;

    private static final double LIMIT = 3.5;

    /** The quantile 0.75 of the normal distribution: by it the median deviation becomes a standard deviation. */
    private static final double NORMAL_QUARTILE = 0.6745;

    private final boolean knows;
    private final double median;
    private final double spread;

    /**
     * @param leastLogSpread standard deviation of the logarithm that is ordinary, above 0: durations that happen to agree
     *     closely must not make an ordinary one odd
     */
    OddOneOut(List<Double> durationsS, double leastLogSpread) {
        List<Double> logs = durationsS.stream().map(Math::log).toList();
        knows = logs.size() >= FEWEST;
        median = knows ? median(logs) : 0;
        double deviation =
                knows ? median(logs.stream().map(x -> Math.abs(x - median)).toList()) : 0;
        spread = Math.max(deviation / NORMAL_QUARTILE, leastLogSpread);
    }

    boolean isOdd(double durationS) {
        return knows && Math.abs(score(durationS)) > LIMIT;
    }

    double score(double durationS) {
        return (Math.log(durationS) - median) / spread;
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }
}
