package crowdline.speech.pace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How well a speaker's pace foretells a remark it was not learnt from: each remark in turn is left out, and timed by the
 * pace that the others give.
 *
 * @param remarks how many were left out, 2 or more
 * @param meanError mean of the relative errors without their signs, 0 or more
 * @param shareUnderTenth share of the remarks with an error under 10 %, 0 to 1
 */
public record PaceScore(int remarks, double meanError, double shareUnderTenth) {
    private static final double TENTH = 0.1;

    /**
     * The score of these remarks, by the same model that {@link PaceFit#fit} takes for all of them; empty for a single
     * remark, or if what is left without one of them gives no pace.
     */
    public static Optional<PaceScore> leaveOneOut(List<TimedRemark> timed) {
        if (timed.size() < 2) {
            return Optional.empty();
        }
        double sum = 0;
        int close = 0;
        for (int out = 0; out < timed.size(); out++) {
            List<TimedRemark> others = new ArrayList<>(timed);
            TimedRemark left = others.remove(out);
            double error;
            try {
                Pace pace = PaceFit.fit("others", others, timed.size() >= PaceFit.ENOUGH);
                error = Math.abs(pace.seconds(left.text()) / left.seconds() - 1);
            } catch (IllegalArgumentException e) {
                return Optional.empty();
            }
            sum += error;
            close += error < TENTH ? 1 : 0;
        }
        return Optional.of(new PaceScore(timed.size(), sum / timed.size(), (double) close / timed.size()));
    }

    /** The score in a sentence for the speaker, or why there is none. */
    public static String inWords(Optional<PaceScore> score) {
        return score.map(s -> String.format(
                        Locale.UK,
                        "Each predicted from the others: mean error %.1f%%, %d of %d within 10%%.",
                        100 * s.meanError(),
                        Math.round(s.shareUnderTenth() * s.remarks()),
                        s.remarks()))
                .orElse("There are too few to say how good it is; time more remarks of different lengths.");
    }
}
