package crowdline.draft;

import crowdline.flight.leg.Sample;
import crowdline.sight.FlownPath;
import crowdline.sight.fact.CrowdFact;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * From when to when in a figure a fact may begin, so that it is said while the crowd sees it: nobody tells of the hardest pull
 * while it slows down for a spin. Seconds after the figure's start.
 */
record TrueWhile(double fromS, double toS) {
    /** A little before its moment, and so long after it, a sentence still speaks of it; by judgement, no source. */
    private static final double BEFORE_S = 0.5;

    private static final double AFTER_S = 3;

    /**
     * When a fact is seen to be true; null where it may be said at any time.
     *
     * @param path the samples of its figure alone
     * @param startS when that begins, on the clock of the samples
     */
    static @Nullable TrueWhile of(CrowdFact fact, FlownPath path, double startS) {
        List<Sample> samples = path.samples();
        if (samples.isEmpty()) {
            return null;
        }
        return switch (fact.kind()) {
            case HEAVIEST -> at(most(samples, Comparator.comparingDouble(Sample::g)), startS);
            case LIGHTEST ->
                at(most(samples, Comparator.comparingDouble(Sample::g).reversed()), startS);
            case FASTEST -> at(most(samples, Comparator.comparingDouble(Sample::speedMps)), startS);
            case HIGHEST ->
                at(most(samples, Comparator.comparingDouble(s -> s.place().z())), startS);
            case CLIMB -> during(path.greatestClimb(), startS);
            case DROP -> during(path.greatestDrop(), startS);
            case UPSIDE_DOWN ->
                samples.stream()
                        .filter(s -> s.up().z() < 0)
                        .findFirst()
                        .map(s -> new TrueWhile(s.tS() - startS, Double.POSITIVE_INFINITY))
                        .orElse(null);
            default -> null;
        };
    }

    private static Sample most(List<Sample> samples, Comparator<Sample> by) {
        return samples.stream().max(by).orElseThrow();
    }

    private static TrueWhile at(Sample sample, double startS) {
        return new TrueWhile(sample.tS() - startS - BEFORE_S, sample.tS() - startS + AFTER_S);
    }

    private static TrueWhile during(FlownPath.Leg leg, double startS) {
        double endS = leg.endS() - startS;
        return new TrueWhile(endS - leg.lastsS(), endS + BEFORE_S);
    }
}
