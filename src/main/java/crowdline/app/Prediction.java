package crowdline.app;

import crowdline.console.live.ActSheet;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.Spread;
import crowdline.timing.ActTimes;
import crowdline.timing.PredictedTimes;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was predicted for one variant of an act. The flight is there at once, since the clock and the picture go by it; the
 * varied flights behind the bands are flown when the times are first asked for. It may be asked from any thread.
 */
final class Prediction {
    private static final long SEED = 1;

    private final Predictor predictor;
    private final Flight flight;
    private final ActSheet sheet;
    private final int firstFlights;
    private volatile @Nullable Varied varied;

    /** What varied flights gave. */
    private record Varied(List<Spread.Band> bands, ActTimes times) {}

    /** @param firstFlights varied flights behind the first bands, 1 or more */
    Prediction(Predictor predictor, int firstFlights) {
        this.predictor = predictor;
        this.firstFlights = firstFlights;
        flight = predictor.predict();
        sheet = ActSheet.of(flight);
    }

    Flight flight() {
        return flight;
    }

    ActSheet sheet() {
        return sheet;
    }

    /** When each figure is flown, with its band. */
    ActTimes times() {
        return varied().times();
    }

    /** The bands behind the times, one for each figure of the flight. */
    List<Spread.Band> bands() {
        return varied().bands();
    }

    /** How long a figure takes, seconds; not a number if nobody predicted it. Needs no bands. */
    double durationS(String figureId) {
        for (FigureFlight figure : flight.figures()) {
            if (figure.figureId().equals(figureId)) {
                return PredictedTimes.durationS(figure);
            }
        }
        return Double.NaN;
    }

    /** Flies so many varied flights for the bands; takes a moment. */
    void refine(int flights) {
        varied = flown(flights);
    }

    private Varied varied() {
        Varied known = varied;
        return known != null ? known : firstVaried();
    }

    private synchronized Varied firstVaried() {
        Varied known = varied;
        if (known == null) {
            known = flown(firstFlights);
            varied = known;
        }
        return known;
    }

    private Varied flown(int flights) {
        List<Spread.Band> bands =
                new Spread(predictor, SEED).fly(flights, share -> {}).bands();
        return new Varied(bands, PredictedTimes.of(flight, bands));
    }
}
