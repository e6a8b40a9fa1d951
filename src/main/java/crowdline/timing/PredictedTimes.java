package crowdline.timing;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Spread;
import java.util.ArrayList;
import java.util.List;

/** The times of an act as the prediction has them, before any pass was flown. */
public final class PredictedTimes {
    /** Shortest time a figure counts for, seconds; the record needs more than nothing. */
    private static final double LEAST_S = 0.1;

    /** Band of a figure that was only given a duration, or that no varied flight got to: judgement, no source. */
    private static final double UNKNOWN_SHARE = 0.2;

    private PredictedTimes() {}

    /**
     * The times of a flight.
     *
     * @param bands one for each figure of the flight
     */
    public static ActTimes of(Flight flight, List<Spread.Band> bands) {
        List<FigureTime> times = new ArrayList<>();
        for (int i = 0; i < flight.figures().size(); i++) {
            times.add(time(flight.figures().get(i), bands.get(i)));
        }
        return new ActTimes(flight.actId(), flight.variant(), times);
    }

    /** The time a figure counts for, seconds, above 0; it needs no band. */
    public static double durationS(FigureFlight figure) {
        return Math.max(LEAST_S, figure.durationS());
    }

    private static FigureTime time(FigureFlight figure, Spread.Band band) {
        double duration = durationS(figure);
        boolean known = figure.simulated() && Double.isFinite(band.lowS());
        double low = known ? band.lowS() : duration * (1 - UNKNOWN_SHARE);
        double high = known ? band.highS() : duration * (1 + UNKNOWN_SHARE);
        return new FigureTime(
                figure.figureId(),
                figure.startS(),
                duration,
                Math.max(LEAST_S / 2, Math.min(low, duration)),
                Math.max(high, duration));
    }
}
