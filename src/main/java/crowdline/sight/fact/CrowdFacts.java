package crowdline.sight.fact;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.CrowdUnits;
import crowdline.show.Show;
import crowdline.show.aircraft.Airframe;
import crowdline.sight.FlownPath;
import java.util.ArrayList;
import java.util.List;

/**
 * Facts a crowd can picture, from a predicted flight.
 *
 * @param facts of the whole act, the most telling first, then those of each figure in the order flown, each figure's most
 *     telling first
 * @param unmade what no fact could be made of, in the same order
 */
public record CrowdFacts(List<CrowdFact> facts, List<UnmadeFact> unmade) {
    /** Goes with every list of facts. */
    public static final String CAUTION = "Predicted for commentary only. A load says nothing about a pilot's health.";

    /** Of something nothing is computed for. */
    public static final CrowdFacts NONE = new CrowdFacts(List.of(), List.of());

    public CrowdFacts {
        facts = List.copyOf(facts);
        unmade = List.copyOf(unmade);
    }

    /**
     * The facts of an act. Figures that were only timed, or could not be flown to their end, have none.
     *
     * @param airframe the one that flies the act
     * @param flight with its samples; without them there are fewer facts
     */
    public static CrowdFacts of(Show show, Airframe airframe, Flight flight) {
        List<FigureFlight> flown = flight.figures().stream()
                .filter(f -> f.simulated() && f.completed())
                .toList();
        CrowdUnits units = show.venue().crowdUnits();
        FlownPath path = new FlownPath(flight.samples());
        int number = number(show, flight);
        Records records = Records.of(flown);
        List<FigureScene> scenes = new ArrayList<>();
        for (FigureFlight f : flown) {
            scenes.add(new FigureScene(
                    f,
                    path.between(f.startS(), f.endS()),
                    airframe,
                    show.venue().crowdToLineM(),
                    show.air().temperatureC(),
                    records,
                    units,
                    scenes.size() + number));
        }
        List<CrowdFact> facts = new ArrayList<>();
        List<UnmadeFact> unmade = new ArrayList<>();
        FactMaking whole = new FactMaking(null);
        new ActFacts(flight, scenes, airframe.glider(), units, number).addTo(whole);
        new AirframeFacts(flight.actId(), airframe, units).addTo(whole);
        whole.addTo(facts, unmade);
        for (FigureScene scene : scenes) {
            FactMaking making = new FactMaking(scene.figure().figureId());
            HeightFacts.addTo(making, scene);
            MotionFacts.addTo(making, scene);
            LoadFacts.addTo(making, scene);
            making.addTo(facts, unmade);
        }
        return new CrowdFacts(facts, unmade);
    }

    private static int number(Show show, Flight flight) {
        return Math.max(0, show.acts().stream().map(Act::id).toList().indexOf(flight.actId()));
    }
}
