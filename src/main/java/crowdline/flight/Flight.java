package crowdline.flight;

import crowdline.flight.leg.Sample;
import java.util.List;
import java.util.Optional;

/**
 * One predicted flight of an act.
 *
 * @param actId the act
 * @param variant the variant's name
 * @param figures in the order flown
 * @param samples every 0.1 s and at every end of an element; empty where they were not asked for
 * @param findings what was noticed
 */
public record Flight(
        String actId, String variant, List<FigureFlight> figures, List<Sample> samples, List<FlightFinding> findings) {

    public Flight {
        figures = List.copyOf(figures);
        samples = List.copyOf(samples);
        findings = List.copyOf(findings);
    }

    public Optional<FigureFlight> figure(String figureId) {
        return figures.stream().filter(f -> f.figureId().equals(figureId)).findFirst();
    }

    /** Length of the act in seconds. */
    public double totalS() {
        return figures.isEmpty() ? 0 : figures.get(figures.size() - 1).endS();
    }
}
