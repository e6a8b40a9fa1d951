package crowdline.flight;

import java.util.ArrayList;
import java.util.List;

/**
 * How far the wind has carried an act by the end of a figure: where it ends less where it would end in still air.
 *
 * @param alongM to the commentator's right; NaN where one of the two flights found no way to fly on
 * @param awayM away from the crowd; NaN likewise
 */
public record Drift(double alongM, double awayM) {
    private static final Drift UNKNOWN = new Drift(Double.NaN, Double.NaN);

    /**
     * One for each figure.
     *
     * @param blown a flight in the wind
     * @param still the same variant of the same act in still air
     */
    public static List<Drift> between(Flight blown, Flight still) {
        if (blown.figures().size() != still.figures().size()) {
            throw new IllegalArgumentException(
                    "the flights have " + blown.figures().size() + " and "
                            + still.figures().size() + " figures; they must be flights of the same variant");
        }
        List<Drift> drifts = new ArrayList<>();
        boolean comparable = true;
        for (int i = 0; i < blown.figures().size(); i++) {
            FigureFlight here = blown.figures().get(i);
            FigureFlight there = still.figures().get(i);
            comparable &= here.completed() && there.completed();
            drifts.add(
                    comparable
                            ? new Drift(here.exitAlongM() - there.exitAlongM(), here.exitAwayM() - there.exitAwayM())
                            : UNKNOWN);
        }
        return List.copyOf(drifts);
    }

    /** Of a flight of which nobody knows where the wind blew it. */
    public static List<Drift> unknown(Flight flight) {
        return flight.figures().stream().map(figure -> UNKNOWN).toList();
    }

    public boolean isKnown() {
        return Double.isFinite(alongM) && Double.isFinite(awayM);
    }
}
