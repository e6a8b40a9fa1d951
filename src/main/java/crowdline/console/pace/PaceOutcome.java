package crowdline.console.pace;

import crowdline.speech.pace.Pace;
import crowdline.speech.pace.PaceFit;
import crowdline.speech.pace.PaceScore;
import crowdline.speech.pace.TimedRemark;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What was learned from a run.
 *
 * @param pace the speaker's, or null if none can be learned
 * @param lines what it is and how good, in sentences
 */
public record PaceOutcome(@Nullable Pace pace, List<String> lines) {
    private static final double FASTER_BY = 0.005;

    public PaceOutcome {
        lines = List.copyOf(lines);
    }

    /** Learns a speaker's pace. */
    public static PaceOutcome of(String speaker, List<TimedRemark> timed) {
        try {
            Pace pace = PaceFit.fit(speaker, timed);
            return new PaceOutcome(
                    pace,
                    List.of(
                            PaceFit.explanation(timed.size()),
                            against(pace, timed),
                            pace.bandInWords(),
                            PaceScore.inWords(PaceScore.leaveOneOut(timed))));
        } catch (IllegalArgumentException e) {
            return new PaceOutcome(null, List.of("No pace could be learned: " + e.getMessage() + "."));
        }
    }

    private static String against(Pace pace, List<TimedRemark> timed) {
        double own = 0;
        double usual = 0;
        for (TimedRemark remark : timed) {
            own += pace.time(remark.text()).seconds();
            usual += Pace.DEFAULT.time(remark.text()).seconds();
        }
        double more = own / usual - 1;
        String than = Math.abs(more) < FASTER_BY
                ? "as long as"
                : String.format(Locale.UK, "%.0f%% %s than", 100 * Math.abs(more), more > 0 ? "longer" : "shorter");
        return String.format(Locale.UK, "These remarks take %.1f s, %s at the default pace.", own, than);
    }
}
