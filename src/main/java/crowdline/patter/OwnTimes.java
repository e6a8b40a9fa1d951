package crowdline.patter;

import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import org.jspecify.annotations.Nullable;

/**
 * A remark's own times with the moments it is tied to put in, seconds after the start of its figure.
 *
 * @param momentS when the moment it is tied to comes; null if its times count from the start of the figure
 * @param earliestS earliest start, or null for the rule of its kind
 * @param latestS latest end, or null for the rule of its kind
 * @param startByS latest start, for what is only told beside its moment; null where {@code latestS} says it
 */
public record OwnTimes(
        @Nullable Double momentS,
        @Nullable Double earliestS,
        @Nullable Double latestS,
        @Nullable Double startByS) {
    private static final OwnTimes NONE = new OwnTimes(null, null, null, null);

    /**
     * The times of a remark in a figure in which this is seen. What is tied to a moment that the figure does not have has none
     * of its own.
     */
    public static OwnTimes of(Remark remark, FigureMoments seen, PatterRules rules) {
        if (!remark.isTied()) {
            return new OwnTimes(null, remark.earliestS(), remark.latestS(), null);
        }
        Double at = when(remark.at(), seen);
        Double until = when(remark.until(), seen);
        if ((at == null && remark.at() != null) || (until == null && remark.until() != null)) {
            return NONE;
        }
        double startS = at == null ? 0 : at;
        Double own = remark.earliestS();
        Double earliestS =
                own == null ? at == null ? null : Double.valueOf(at - rules.spareS()) : Double.valueOf(startS + own);
        Double latest = remark.latestS();
        if (until != null || latest != null) {
            double endS = (until == null ? startS : until) + (latest == null ? 0 : latest);
            return new OwnTimes(at, earliestS, endS, null);
        }
        return new OwnTimes(at, earliestS, null, startS + Math.max(0, own == null ? 0 : own) + rules.pastMomentS());
    }

    private static @Nullable Double when(@Nullable MomentName name, FigureMoments seen) {
        return name == null ? null : seen.find(name).map(Moment::afterS).orElse(null);
    }
}
