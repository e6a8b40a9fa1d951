package crowdline.timing;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One figure as one pass timed it.
 *
 * @param passNumber place of the pass among those of its act and variant, from 1
 * @param passId which pass
 * @param durationS seconds, above 0
 * @param odd why this one is unlike the others, in words; null if it is not
 */
public record TimedRun(
        int passNumber,
        String passId,
        double durationS,
        @Nullable String odd) {

    /** The same run, looked at among all runs of the figure. */
    static TimedRun judged(TimedRun run, List<TimedRun> all, OddOneOut rule) {
        return rule.isOdd(run.durationS())
                ? new TimedRun(run.passNumber(), run.passId(), run.durationS(), reason(run, all, rule))
                : run;
    }

    private static String reason(TimedRun run, List<TimedRun> all, OddOneOut rule) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (TimedRun other : all) {
            if (!other.equals(run) && !rule.isOdd(other.durationS())) {
                low = Math.min(low, other.durationS());
                high = Math.max(high, other.durationS());
            }
        }
        return "pass " + run.passNumber() + ": " + seconds(run.durationS()) + " s, others "
                + (seconds(low).equals(seconds(high)) ? seconds(low) : seconds(low) + "–" + seconds(high)) + " s";
    }

    private static String seconds(double value) {
        return String.format(Locale.UK, "%.1f", value);
    }
}
