package crowdline.sight;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.show.Airframe;
import crowdline.show.Show;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Facts a crowd can picture, from a predicted flight. */
public final class CrowdFacts {
    /** Goes with every list of facts. */
    public static final String CAUTION = "Predicted for commentary only. A load says nothing about a pilot's health.";

    private CrowdFacts() {}

    /**
     * The facts of the whole act, the most telling first, then those of each figure in the order flown, each figure's
     * most telling first. Figures that were only timed, or could not be flown to their end, have none.
     *
     * @param airframe the one that flies the act
     * @param flight with its samples; without them there are fewer facts
     */
    public static List<CrowdFact> of(Show show, Airframe airframe, Flight flight) {
        List<FigureFlight> flown = flight.figures().stream()
                .filter(f -> f.simulated() && f.completed())
                .toList();
        FlownPath whole = new FlownPath(flight.samples());
        Records records = Records.of(flown);
        List<FigureScene> scenes = new ArrayList<>();
        for (FigureFlight f : flown) {
            scenes.add(new FigureScene(
                    f,
                    whole.between(f.startS(), f.endS()),
                    airframe,
                    show.venue().crowdToLineM(),
                    show.air().temperatureC(),
                    records,
                    scenes.size()));
        }
        List<CrowdFact> facts = new ArrayList<>();
        ranked(
                facts,
                Stream.concat(
                        new ActFacts(flight, scenes, airframe.glider()).all().stream(),
                        new AirframeFacts(flight.actId(), airframe).all().stream()));
        for (FigureScene scene : scenes) {
            ranked(
                    facts,
                    Stream.of(HeightFacts.of(scene), MotionFacts.of(scene), LoadFacts.of(scene))
                            .flatMap(s -> s));
        }
        return List.copyOf(facts);
    }

    private static void ranked(List<CrowdFact> facts, Stream<CrowdFact> some) {
        some.sorted(Comparator.comparingDouble(CrowdFact::telling).reversed()).forEach(facts::add);
    }
}
