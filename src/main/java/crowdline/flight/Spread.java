package crowdline.flight;

import crowdline.flight.body.Variation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;

/**
 * How much the length of each figure varies from flight to flight, by flying many with everything a little different.
 *
 * <p>Standard deviations are judgement, no source: mass 2 %, power 3 %, drag 5 %, pull 8 %, roll rates 8 %, pauses 15 %,
 * entry speed 2 m/s, wind 1.5 m/s each way. Each is drawn once for a flight, cut off at two and a half.
 */
public final class Spread {
    private static final double CUT = 2.5;

    /**
     * The middle four fifths of a figure's durations, seconds.
     *
     * @param lowS a tenth of the flights is shorter
     * @param middleS half of the flights are shorter
     * @param highS a tenth of the flights is longer
     */
    public record Band(double lowS, double middleS, double highS) {}

    /**
     * What many flights gave.
     *
     * @param bands one for each figure, in the order flown
     * @param flights how many flights were asked for
     * @param complete how many of them got to their end
     */
    public record Bands(List<Band> bands, int flights, int complete) {
        public Bands {
            bands = List.copyOf(bands);
        }
    }

    private final Predictor predictor;
    private final long seed;
    private final Workers workers;

    /**
     * @param seed the same seed gives the same flights, whoever flies them
     * @param workers fly them
     */
    public Spread(Predictor predictor, long seed, Workers workers) {
        this.predictor = predictor;
        this.seed = seed;
        this.workers = workers;
    }

    /**
     * Flies them.
     *
     * @param flights how many, 1 or more
     * @param progress told the share done, 0 to 1, from any thread
     */
    public Bands fly(int flights, DoubleConsumer progress) {
        if (flights < 1) {
            throw new IllegalArgumentException("the number of flights is " + flights + "; it must be 1 or more");
        }
        AtomicInteger done = new AtomicInteger();
        double[][] all = new double[flights][];
        workers.each(flights, i -> {
            all[i] = predictor.durations(draw(i));
            progress.accept(done.incrementAndGet() / (double) flights);
        });
        int complete = (int) Arrays.stream(all)
                .filter(d -> d.length == 0 || !Double.isNaN(d[d.length - 1]))
                .count();
        int figures = all[0].length;
        List<Band> bands = new ArrayList<>();
        for (int f = 0; f < figures; f++) {
            int figure = f;
            double[] sorted = Arrays.stream(all)
                    .mapToDouble(d -> d[figure])
                    .filter(Double::isFinite)
                    .sorted()
                    .toArray();
            bands.add(new Band(quantile(sorted, 0.1), quantile(sorted, 0.5), quantile(sorted, 0.9)));
        }
        return new Bands(bands, flights, complete);
    }

    /** Linear between order statistics; NaN when nothing was flown. */
    private static double quantile(double[] sorted, double share) {
        if (sorted.length == 0) {
            return Double.NaN;
        }
        double place = share * (sorted.length - 1);
        int low = (int) place;
        int high = Math.min(low + 1, sorted.length - 1);
        return sorted[low] + (place - low) * (sorted[high] - sorted[low]);
    }

    private Variation draw(int flight) {
        return drawn(new SplittableRandom(seed + 0x9E3779B97F4A7C15L * (flight + 1)), 1);
    }

    /**
     * How one flight departs from its plan.
     *
     * @param much 1 for as much as usual, 0 for not at all, at most 2
     */
    public static Variation drawn(SplittableRandom random, double much) {
        if (!(much >= 0 && much <= 2)) {
            throw new IllegalArgumentException("a flight departs from its plan by 0 to 2 times the usual, not " + much);
        }
        return new Variation(
                1 + 0.02 * much * bell(random),
                1 + 0.03 * much * bell(random),
                1 + 0.05 * much * bell(random),
                1 + 0.08 * much * bell(random),
                1 + 0.08 * much * bell(random),
                1 + 0.15 * much * bell(random),
                2 * much * bell(random),
                1.5 * much * bell(random),
                1.5 * much * bell(random));
    }

    private static double bell(SplittableRandom random) {
        double value;
        do {
            value = random.nextGaussian();
        } while (Math.abs(value) > CUT);
        return value;
    }
}
