package crowdline.flight;

import java.util.List;

/**
 * What one figure is predicted to do. Times in seconds since the act began, SI units, heights above the datum. Where an act is
 * only timed, nothing else is known of its figures: all other numbers are then not a number.
 *
 * @param figureId the figure's id in its act
 * @param name how it is called; in a whole predicted flight no two have the same
 * @param simulated false where only a given duration stands behind it
 * @param completed false where the prediction found no way to fly it to its end
 * @param greatestG most load factor felt
 * @param leastG least load factor felt
 * @param energyInM energy height at its start: height plus speed as height
 * @param energyOutM energy height at its end
 * @param exitAlongM where it ends along the A-axis
 * @param exitAwayM where it ends along the B-axis
 * @param upsideDownS seconds with the canopy below the horizon
 */
public record FigureFlight(
        String figureId,
        String name,
        boolean simulated,
        boolean completed,
        double startS,
        double endS,
        double entryMps,
        double exitMps,
        double leastMps,
        double greatestMps,
        double lowestM,
        double highestM,
        double greatestG,
        double leastG,
        double energyInM,
        double energyOutM,
        double exitAlongM,
        double exitAwayM,
        double upsideDownS,
        List<ElementFlight> elements) {

    public FigureFlight {
        elements = List.copyOf(elements);
    }

    FigureFlight withName(String other) {
        return new FigureFlight(
                figureId,
                other,
                simulated,
                completed,
                startS,
                endS,
                entryMps,
                exitMps,
                leastMps,
                greatestMps,
                lowestM,
                highestM,
                greatestG,
                leastG,
                energyInM,
                energyOutM,
                exitAlongM,
                exitAwayM,
                upsideDownS,
                elements);
    }

    /** Whether anything is known of it but its times. */
    public boolean isPlaced() {
        return !Double.isNaN(exitAlongM);
    }

    public double durationS() {
        return endS - startS;
    }
}
