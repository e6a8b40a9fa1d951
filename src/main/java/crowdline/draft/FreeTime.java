package crowdline.draft;

import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** When something can be said in a figure, so that the crowd is left to see what is worth watching. Seconds after its start. */
final class FreeTime {
    /** Before a moment worth watching, and after it, nothing is said: to look up, and to see it. As the plan has it. */
    static final double BEFORE_S = 0.5;

    static final double AFTER_S = 1.5;
    /** From one remark to the next, with what the plan keeps spare. */
    private static final double BREATH_S = 1.2;
    /** What the plan keeps inside an edge that may drift. */
    private static final double SPARE_S = 0.6;

    /** A stretch in which something can be said. */
    private record Gap(double fromS, double toS) {}

    private final List<Gap> gaps = new ArrayList<>();

    /**
     * The free time of a figure.
     *
     * @param tailS how long before its end the next call begins, or how far past it one may speak where it is below 0
     */
    FreeTime(double durationS, FigureMoments seen, double tailS) {
        double fromS = SPARE_S;
        for (Moment moment : seen.moments()) {
            if (moment.worthWatching()) {
                add(fromS, moment.afterS() - BEFORE_S);
                fromS = moment.afterS() + AFTER_S;
            }
        }
        add(fromS, durationS - tailS - SPARE_S);
    }

    private void add(double fromS, double toS) {
        if (toS > fromS) {
            gaps.add(new Gap(fromS, toS));
        }
    }

    /** When something so long could begin within these times, at the earliest; empty if it has no place. */
    OptionalDouble find(double seconds, double fromS, double toS) {
        return gaps.stream()
                .filter(g -> Math.min(g.toS(), toS) - Math.max(g.fromS(), fromS) >= seconds)
                .mapToDouble(g -> Math.max(g.fromS(), fromS))
                .findFirst();
    }

    /** Takes a stretch with a breath on both sides. */
    void take(double startS, double endS) {
        List<Gap> left = new ArrayList<>();
        for (Gap gap : gaps) {
            if (gap.toS() <= startS - BREATH_S || gap.fromS() >= endS + BREATH_S) {
                left.add(gap);
                continue;
            }
            if (startS - BREATH_S > gap.fromS()) {
                left.add(new Gap(gap.fromS(), startS - BREATH_S));
            }
            if (gap.toS() > endS + BREATH_S) {
                left.add(new Gap(endS + BREATH_S, gap.toS()));
            }
        }
        gaps.clear();
        gaps.addAll(left);
    }
}
