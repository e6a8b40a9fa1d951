package crowdline.sight.fact;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.leg.Sample;
import crowdline.measure.Units;
import crowdline.show.CrowdUnits;
import crowdline.show.aircraft.Airframe;
import crowdline.sight.FlownPath;
import crowdline.sight.Said;
import crowdline.sight.Sighting;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One figure with all that its facts need.
 *
 * @param path the figure's samples; may be empty
 * @param crowdToLineM distance from the crowd line to the display line, metres, or null if it is not known
 * @param temperatureC of the air
 * @param records which figures hold the act's records
 * @param place among the figures that have facts, counted on from act to act: neighbours say the same in other words
 */
record FigureScene(
        FigureFlight figure,
        FlownPath path,
        Airframe airframe,
        @Nullable Double crowdToLineM,
        double temperatureC,
        Records records,
        CrowdUnits units,
        int place) {

    /** Elements that roll about the nose, by their names in the flight. */
    static final Set<String> ROLLS =
            Set.of("roll", "slow roll", "hesitation roll", "barrel roll", "hover roll", "rolling turn");

    static final Set<String> FLICKS = Set.of("flick", "negative flick");
    static final Set<String> SPINS = Set.of("spin", "inverted spin", "flat spin", "inverted flat spin");
    static final Set<String> TUMBLES = Set.of("tumble");

    /** How far below the ground is the prediction's own roughness. */
    private static final double GROUND_FT = 5;

    CrowdFact fact(CrowdFact.Kind kind, Said said, double share, String text, String shortText) {
        CrowdFact.Subject about = new CrowdFact.Subject(figure.figureId(), figure.figureId());
        return CrowdFact.of(about, kind, said, share, text, shortText);
    }

    List<ElementFlight> elements(Set<String> names) {
        return figure.elements().stream().filter(e -> names.contains(e.name())).toList();
    }

    /** As the crowd sees it; empty if nobody knows how far away the crowd is. */
    Optional<Sighting> sighting(Sample sample) {
        return crowdToLineM == null ? Optional.empty() : Optional.of(Sighting.of(sample.place(), crowdToLineM));
    }

    /** Where it comes below the ground, such as "it comes to −300 ft, below the ground"; empty if it stays above. */
    Optional<String> belowGround() {
        double lowestFt = Units.ftFromM(figure.lowestM());
        return lowestFt < -GROUND_FT
                ? Optional.of(String.format(Locale.UK, "it comes to %,.0f ft, below the ground", lowestFt))
                : Optional.empty();
    }

    Optional<Sample> highest() {
        return path.samples().stream()
                .max(Comparator.comparingDouble(s -> s.place().z()));
    }

    /** Where it is farthest from the crowd; empty as {@link #sighting} is. */
    Optional<Sighting> farthest() {
        return path.samples().stream()
                .flatMap(s -> sighting(s).stream())
                .max(Comparator.comparingDouble(Sighting::slantM));
    }
}
