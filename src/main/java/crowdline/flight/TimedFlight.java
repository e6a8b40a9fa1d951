package crowdline.flight;

import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The flight of an act of which nothing is known but its times: no path, and no number that would need one. */
final class TimedFlight {
    /** A figure and how it is called. */
    record Timed(Figure figure, String name) {
        double durationS() {
            Double given = figure.durationS();
            return given == null ? 0 : given;
        }
    }

    private static final double UNKNOWN = Double.NaN;

    private TimedFlight() {}

    static Flight of(Act act, Variant variant, List<Timed> plan) {
        List<FigureFlight> figures = new ArrayList<>();
        double tS = 0;
        for (Timed timed : plan) {
            double endS = tS + timed.durationS();
            figures.add(new FigureFlight(
                    timed.figure().id(),
                    timed.name(),
                    false,
                    true,
                    tS,
                    endS,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    UNKNOWN,
                    List.of()));
            tS = endS;
        }
        return new Flight(
                act.id(), variant.name(), FigureNames.told(figures, Set.of(), List.of(), null), List.of(), List.of());
    }
}
