package crowdline.flight.moment;

import crowdline.flight.FigureFlight;
import crowdline.flight.Predictor;
import crowdline.flight.leg.Sample;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The moments of one figure that can be seen, by what is flown and not by what it is called. A figure that is only timed
 * begins and flies out.
 *
 * @param moments in the order seen; the first begins the figure, the last flies out
 */
public record FigureMoments(List<Moment> moments) {
    /** Up there at less than this share of the speed that the figure began with, the aircraft seems to hang. */
    private static final double HANGING = 0.6;

    /**
     * A moment found.
     *
     * @param tS seconds since the act began
     */
    record Seen(MomentKind kind, double tS) {}

    public FigureMoments {
        moments = List.copyOf(moments);
    }

    /**
     * The moments of a predicted figure.
     *
     * @param samples those of the whole flight; without them only what is known of the elements is found
     */
    public static FigureMoments of(FigureFlight figure, List<Sample> samples) {
        List<Sample> own = within(samples, figure.startS(), figure.endS());
        List<Seen> seen = new ArrayList<>();
        if (figure.simulated()) {
            List<ElementMoments> elements = figure.elements().stream()
                    .map(e -> ElementMoments.of(e, own))
                    .toList();
            elements.forEach(e -> seen.addAll(e.seen()));
            PathMoments.runs(own, figure.elements(), elements).forEach(run -> seen.addAll(run.seen()));
        }
        seen.sort(Comparator.comparingDouble(Seen::tS).thenComparing(Seen::kind));
        List<Moment> moments = new ArrayList<>();
        Map<MomentKind, Integer> count = new EnumMap<>(MomentKind.class);
        moments.add(new Moment(MomentName.first(MomentKind.BEGINS), 0, false));
        for (Seen one : seen) {
            double afterS = Math.min(Math.max(one.tS() - figure.startS(), 0), figure.durationS());
            boolean watch = one.kind().isWorthWatching()
                    && (one.kind() != MomentKind.OVER_THE_TOP || hangs(figure, own, one.tS()));
            moments.add(
                    new Moment(new MomentName(one.kind(), count.merge(one.kind(), 1, Integer::sum)), afterS, watch));
        }
        moments.add(new Moment(MomentName.first(MomentKind.FLIES_OUT), figure.durationS(), false));
        return new FigureMoments(moments);
    }

    /** The moments of a figure of which nothing but its time is known. */
    public static FigureMoments timed(double durationS) {
        return new FigureMoments(List.of(
                new Moment(MomentName.first(MomentKind.BEGINS), 0, false),
                new Moment(MomentName.first(MomentKind.FLIES_OUT), durationS, false)));
    }

    private static boolean hangs(FigureFlight figure, List<Sample> own, double tS) {
        List<Sample> near = within(own, tS - Predictor.SAMPLE_S, tS + Predictor.SAMPLE_S);
        return near.stream().anyMatch(s -> s.speedMps() < HANGING * figure.entryMps());
    }

    /** The samples between two times, both included. */
    static List<Sample> within(List<Sample> samples, double fromS, double toS) {
        int from = firstFrom(samples, fromS - 1e-9);
        int to = firstFrom(samples, toS + 1e-9);
        return samples.subList(from, Math.max(from, to));
    }

    private static int firstFrom(List<Sample> samples, double tS) {
        int low = 0;
        int high = samples.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (samples.get(middle).tS() < tS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    public Optional<Moment> find(MomentName name) {
        return moments.stream().filter(m -> m.name().equals(name)).findFirst();
    }

    /** The same moments, all but the first so many seconds later, though none before the figure began. */
    public FigureMoments later(double seconds) {
        return new FigureMoments(moments.stream()
                .map(m -> m.name().kind() == MomentKind.BEGINS ? m : m.at(Math.max(0, m.afterS() + seconds)))
                .toList());
    }

    /** The same moments where the figure lasts so long, seconds: each keeps its share of the figure. */
    public FigureMoments lasting(double seconds) {
        double predictedS = moments.get(moments.size() - 1).afterS();
        return predictedS > 0
                ? new FigureMoments(moments.stream()
                        .map(m -> m.scaled(seconds / predictedS))
                        .toList())
                : timed(seconds);
    }
}
