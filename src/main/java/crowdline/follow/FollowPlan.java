package crowdline.follow;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.leg.Sample;
import crowdline.measure.EightInTen;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What a follower knows of an act before it is flown: the predicted flight in fine bins, and how long each figure takes
 * with its band. It never changes and may be shared.
 */
public final class FollowPlan {
    /** Share of a duration: its standard deviation where no band is known. Judgement, no source. */
    private static final double UNKNOWN_SHARE = 0.08;

    /** Share of a figure's time: what was named for less was not flown. Less names figures that were only expected. */
    private static final double GLIMPSE_SHARE = 0.45;

    /** Factor on the greatest speed predicted, beyond which a reading is not believed; generous on purpose. */
    private static final double FASTER = 1.5;
    /** Metres a second of wind on top of that. */
    private static final double WIND_MPS = 20;

    private final List<FigureFlight> figures;
    final Bins bins;
    final double[] rate;
    final double[] variance;
    final double fastestMps;
    private final boolean startsOnGround;

    private FollowPlan(Flight flight, @Nullable ActTimes times) {
        figures = flight.figures();
        bins = new Bins(flight);
        rate = new double[figures.size()];
        variance = new double[figures.size()];
        for (int f = 0; f < figures.size(); f++) {
            double predicted = Math.max(figures.get(f).durationS(), Bins.WIDTH_S);
            double duration = predicted;
            double sigma = UNKNOWN_SHARE * predicted;
            if (times != null) {
                FigureTime time = times.figures().get(f);
                duration = time.durationS();
                sigma = (time.highS() - time.lowS()) / 2 / EightInTen.HALF_WIDTH;
            }
            rate[f] = predicted / duration;
            variance[f] = sigma * sigma / duration;
        }
        startsOnGround = Evidence.startsOnGround(bins);
        fastestMps = FASTER * fastest(flight.samples()) + WIND_MPS;
    }

    /** True if the act begins with a take-off, and not in the air. */
    public boolean startsOnGround() {
        return startsOnGround;
    }

    /**
     * The plan of a predicted flight, with durations as predicted.
     *
     * @throws IllegalArgumentException if the flight has no figures or no samples
     */
    public static FollowPlan of(Flight flight) {
        return new FollowPlan(checked(flight), null);
    }

    /**
     * The plan of a predicted flight with durations and bands known better, as from passes.
     *
     * @param times of the same figures in the same order
     * @throws IllegalArgumentException if the flight has no figures or no samples, or the times are of other figures
     */
    public static FollowPlan of(Flight flight, ActTimes times) {
        List<String> flown =
                flight.figures().stream().map(FigureFlight::figureId).toList();
        List<String> timed = times.figures().stream().map(FigureTime::figureId).toList();
        if (!flown.equals(timed)) {
            throw new IllegalArgumentException("the times are of the figures " + timed + " and the flight has " + flown
                    + "; both must have the same in the same order");
        }
        return new FollowPlan(checked(flight), times);
    }

    private static Flight checked(Flight flight) {
        if (flight.figures().isEmpty() || flight.samples().size() < 2) {
            throw new IllegalArgumentException("the flight of " + flight.actId() + " has "
                    + flight.figures().size() + " figures and "
                    + flight.samples().size() + " samples; it needs at least 1 and 2");
        }
        return flight;
    }

    /** How many figures the act has. */
    public int size() {
        return figures.size();
    }

    /** A figure's id in its act. */
    public String figureId(int index) {
        return figures.get(index).figureId();
    }

    /** How a figure is called. */
    public String name(int index) {
        return figures.get(index).name();
    }

    /** How long a figure is expected to take, seconds. */
    public double plannedS(int index) {
        return bins.length(index) * Bins.WIDTH_S / rate[index];
    }

    /** True if only its time is known, so that nothing but time tells how far through it the aircraft is. */
    public boolean isTimedOnly(int index) {
        return bins.timed[bins.first[index]];
    }

    /** How many figures have a predicted path by which they can be told from others. */
    public int recognisable() {
        return (int) IntStream.range(0, size()).filter(f -> !isTimedOnly(f)).count();
    }

    /** The element flown at a share of a figure's predicted time, from 0; 0 also where a figure has none. */
    int element(int figure, double share) {
        FigureFlight f = figures.get(figure);
        double t = f.startS() + share * f.durationS();
        int element = 0;
        for (int i = 0; i < f.elements().size(); i++) {
            if (f.elements().get(i).startS() <= t) {
                element = i;
            }
        }
        return element;
    }

    /**
     * A figure believed in for less than this, before another, was not flown, seconds; 0 where it may take any time. A landing
     * may take any time too, but nothing follows it.
     */
    double glimpseS(int figure) {
        boolean anyTime = isTimedOnly(figure) && figure < size() - 1;
        return anyTime ? 0 : GLIMPSE_SHARE * bins.length(figure) * Bins.WIDTH_S / rate[figure];
    }

    private static double fastest(List<Sample> samples) {
        return samples.stream().mapToDouble(Sample::speedMps).max().orElse(0);
    }
}
