package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Spread.Band;
import crowdline.timing.PredictedTimes;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How wide the band of each figure was when it was last flown, for times that cannot wait until it is flown again. It may be
 * asked from any thread.
 */
final class LastBands {
    private final Map<Where, Width> widths = new ConcurrentHashMap<>();

    private record Where(String actId, String variant, String figureId) {}

    /** Against the time of the figure itself. */
    private record Width(double low, double middle, double high) {}

    void flown(Flight flight, List<Band> bands) {
        for (int i = 0; i < bands.size(); i++) {
            double durationS = PredictedTimes.durationS(flight.figures().get(i));
            Band band = bands.get(i);
            Where where = where(flight, flight.figures().get(i));
            if (Double.isFinite(band.lowS())) {
                widths.put(
                        where,
                        new Width(band.lowS() / durationS, band.middleS() / durationS, band.highS() / durationS));
            } else {
                widths.remove(where);
            }
        }
    }

    /** A band for each figure, as wide as its last; not numbers where it was never flown. */
    List<Band> of(Flight flight) {
        return flight.figures().stream().map(figure -> of(flight, figure)).toList();
    }

    private Band of(Flight flight, FigureFlight figure) {
        double durationS = PredictedTimes.durationS(figure);
        Width width = widths.get(where(flight, figure));
        return width == null
                ? new Band(Double.NaN, Double.NaN, Double.NaN)
                : new Band(durationS * width.low(), durationS * width.middle(), durationS * width.high());
    }

    private static Where where(Flight flight, FigureFlight figure) {
        return new Where(flight.actId(), flight.variant(), figure.figureId());
    }
}
