package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * How far a log lies from an act: in place, in height, and in what is flown.
 *
 * @param asideM metres over the ground from the middle of the log to the space of the act's figures; 0 within it
 * @param heightM metres from its middle height to the heights of the figures, above them positive; 0 among them
 * @param steepShare share of its time in which it climbs or dives steeply, 0 to 1
 * @param plannedSteepShare the same of the act's figures
 */
public record LogDistance(double asideM, double heightM, double steepShare, double plannedSteepShare) {
    /** Climb against speed over the ground: 20°. */
    private static final double STEEP = 0.364;
    /** Seconds over which a climb is taken. */
    private static final double OVER_S = 1;

    /**
     * Compares a log with a plan.
     *
     * @param log at least one reading, in the order of time
     */
    public static LogDistance of(FollowPlan plan, List<Reading> log) {
        Bins bins = plan.bins;
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        int flown = 0;
        int steep = 0;
        for (int i = 0; i < bins.size; i++) {
            if (bins.timed[i]) {
                continue;
            }
            double[] at = {bins.xM[i], bins.yM[i], bins.zM[i]};
            for (int k = 0; k < at.length; k++) {
                low[k] = Math.min(low[k], at[k]);
                high[k] = Math.max(high[k], at[k]);
            }
            flown++;
            steep += isSteep(Math.hypot(bins.vxMps[i], bins.vyMps[i]), bins.vzMps[i]) ? 1 : 0;
        }
        if (flown == 0) {
            return new LogDistance(0, 0, steepShare(log), 0);
        }
        double along = outside(middle(log, Reading::alongM), low[0], high[0]);
        double away = outside(middle(log, Reading::awayM), low[1], high[1]);
        double height = outside(middle(log, Reading::heightM), low[2], high[2]);
        return new LogDistance(Math.hypot(along, away), height, steepShare(log), steep / (double) flown);
    }

    /** In one sentence, for somebody who wonders why the act is not found in the log. */
    public String words() {
        String place = asideM < 1
                ? "within the act's space"
                : String.format(Locale.UK, "%,.0f m outside the act's space", asideM);
        String height = heightM == 0
                ? "at its heights"
                : String.format(
                        Locale.UK, "%,.0f m %s its heights", Math.abs(heightM), heightM > 0 ? "above" : "below");
        return String.format(
                Locale.UK,
                "The middle of the log lies %s and %s; it climbs or dives steeply for %.0f%% of its time, the act for %.0f%%.",
                place,
                height,
                100 * steepShare,
                100 * plannedSteepShare);
    }

    private static boolean isSteep(double level, double climb) {
        return Math.abs(climb) > STEEP * level;
    }

    private static double outside(double value, double low, double high) {
        return value < low ? value - low : Math.max(0, value - high);
    }

    private static double middle(List<Reading> log, ToDoubleFunction<Reading> what) {
        double[] sorted = log.stream().mapToDouble(what).sorted().toArray();
        return sorted[sorted.length / 2];
    }

    private static double steepShare(List<Reading> log) {
        double all = 0;
        double steep = 0;
        int from = 0;
        for (int i = 1; i < log.size(); i++) {
            Reading to = log.get(i);
            double since = to.tS() - log.get(from).tS();
            if (since < OVER_S) {
                continue;
            }
            Reading before = log.get(from);
            double level = Math.hypot(to.alongM() - before.alongM(), to.awayM() - before.awayM());
            double climb = to.heightM() - before.heightM();
            // Standing still, noise climbs as steeply as it moves.
            boolean moves = Math.hypot(level, climb) > 10 * since;
            all += since;
            steep += moves && isSteep(level, climb) ? since : 0;
            from = i;
        }
        return all > 0 ? steep / all : 0;
    }
}
