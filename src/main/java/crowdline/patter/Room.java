package crowdline.patter;

import crowdline.measure.Must;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.timing.FigureTime;
import org.jspecify.annotations.Nullable;

/**
 * The time there is for a remark, seconds, each 0 or more.
 *
 * @param likelyS if its figure lasts as long as it most likely does
 * @param lowS if its figure is a short one: the lower end of the band
 * @param highS if its figure is a long one: the upper end of the band
 * @param pastS how far it may run past that, because nothing but the end of its figure is in the way
 */
public record Room(double likelyS, double lowS, double highS, double pastS) {
    private static final double NO_LIMIT_S = 1e9;

    public Room {
        Must.beAtLeast("likelyS", likelyS, 0);
        Must.beAtLeast("lowS", lowS, 0);
        Must.beAtLeast("highS", highS, 0);
        Must.beAtLeast("pastS", pastS, 0);
    }

    /** The same whatever its figure does, and not a moment past it. */
    public static Room fixed(double seconds) {
        return new Room(seconds, seconds, seconds, 0);
    }

    /** The time for a call: from the earliest start the rules allow, or its own, to the latest end before its figure. */
    public static Room ofCall(Remark remark, PatterRules rules) {
        return fixed(Math.max(0, callToS(remark, rules) - callFromS(remark, rules)));
    }

    /** When a call may start at the earliest, seconds after the start of its figure, so most often below 0. */
    public static double callFromS(Remark remark, PatterRules rules) {
        return Math.max(-rules.callStartsAtMostBeforeS(), orElse(remark.earliestS(), -NO_LIMIT_S));
    }

    /** When a call must have ended, seconds after the start of its figure, so most often below 0. */
    public static double callToS(Remark remark, PatterRules rules) {
        return Math.min(-rules.callEndsAtLeastBeforeS(), orElse(remark.latestS(), NO_LIMIT_S));
    }

    /**
     * The time for a remark of a figure by its kind, its own limits and the figure; quiets and other remarks left out.
     *
     * @param lasts when its figure is flown
     */
    public static Room of(Remark remark, FigureTime lasts, PatterRules rules) {
        if (remark.kind() == RemarkKind.CALL) {
            return ofCall(remark, rules);
        }
        OwnTimes own = OwnTimes.of(remark, lasts.moments(), rules);
        double fromS = orElse(own.earliestS(), 0);
        double latestS = orElse(own.latestS(), NO_LIMIT_S);
        double endS = Math.min(lasts.durationS(), latestS);
        double likelyS = Math.max(0, endS - fromS);
        double withPastS = Math.max(0, Math.min(lasts.durationS() + rules.runPastS(), latestS) - fromS);
        return new Room(
                likelyS,
                Math.max(0, Math.min(lasts.lowS(), latestS) - fromS),
                Math.max(0, Math.min(lasts.highS(), latestS) - fromS),
                withPastS - likelyS);
    }

    private static double orElse(@Nullable Double value, double other) {
        return value == null ? other : value;
    }
}
