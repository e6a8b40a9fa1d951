package crowdline.sight.fact;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.body.Attitude;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.show.Act;
import crowdline.show.CrowdUnits;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Flights for tests: written down from closed forms, or predicted from single elements. */
public final class Flown {
    private Flown() {}

    /** An invented light biplane of 180 hp; plausible numbers for its class. */
    public static Airframe biplane() {
        return new Airframe(
                "biplane",
                "Invented biplane",
                null,
                new Engine.Propeller(134, 1.93, 2700, Engine.Turns.CLOCKWISE, Engine.PropellerType.CONSTANT_SPEED),
                475,
                9.15,
                5.28,
                4.8,
                0.045,
                0.11,
                1.3,
                1.1,
                200,
                120,
                400,
                180,
                250,
                1.8,
                400,
                6,
                -4,
                175);
    }

    static Airframe glider() {
        return new Airframe(
                "glider",
                "Invented glider",
                null,
                Engine.NONE,
                400,
                11.8,
                12.8,
                6.1,
                0.013,
                0.028,
                1.25,
                0.95,
                100,
                100,
                220,
                130,
                260,
                2.8,
                200,
                7,
                -5,
                155);
    }

    /** A show whose crowd looks north, 200 m from the display line. */
    public static Show show(Airframe airframe) {
        return show(airframe, act(airframe, 1000, 100, List.of(Figure.of("it", "it"))));
    }

    private static Show show(Airframe airframe, Act act) {
        return new Show(
                "Test",
                LocalDate.of(2027, 6, 1),
                new Venue("Nowhere", 52, 0, 0, 90, 200, ZoneId.of("UTC"), Venue.Limits.NONE),
                DayAir.STANDARD,
                List.of(airframe),
                List.of(),
                List.of(act),
                List.of());
    }

    private static Act act(Airframe airframe, double heightFt, double kt, List<Figure> figures) {
        return new Act(
                "act",
                "Test act",
                "pilot",
                airframe.id(),
                LocalTime.NOON,
                10,
                new Placing(0, 0, heightFt, kt, Placing.Heading.RIGHT),
                figures,
                List.of(new Variant(
                        "full", null, figures.stream().map(Figure::id).toList())),
                List.of());
    }

    /** The facts of one figure "it" made of these elements, as the prediction flies it. */
    static List<CrowdFact> predicted(double heightFt, double kt, Element... elements) {
        Figure figure = new Figure("it", "it", null, null, List.of(elements), null, null, null, List.of(), List.of());
        Airframe airframe = biplane();
        Act act = act(airframe, heightFt, kt, List.of(figure));
        Show show = show(airframe, act);
        Flight flight = new Predictor(
                        show, new Catalogue(List.of()), act, act.variants().get(0))
                .predict();
        if (!flight.figures().get(0).completed()) {
            throw new AssertionError(flight.findings().toString());
        }
        return CrowdFacts.of(show, airframe, flight).facts();
    }

    /** The facts of a catalogue's figure as the prediction flies it; none of its own if it cannot be flown from here. */
    static List<CrowdFact> catalogued(Catalogue catalogue, String name, Airframe airframe, double heightFt, double kt) {
        return catalogued(catalogue, name, airframe, heightFt, kt, CrowdUnits.MILES);
    }

    /** The same for a crowd that may measure otherwise. */
    static List<CrowdFact> catalogued(
            Catalogue catalogue, String name, Airframe airframe, double heightFt, double kt, CrowdUnits units) {
        Act act = act(airframe, heightFt, kt, List.of(Figure.of("it", name)));
        Show miles = show(airframe, act);
        Show show = miles.withVenue(miles.venue().withCrowdUnits(units));
        Flight flight = new Predictor(show, catalogue, act, act.variants().get(0)).predict();
        return CrowdFacts.of(show, airframe, flight).facts();
    }

    /** A flight of one figure "it" with samples every tenth of a second from a closed form. */
    public static Flight written(double lastsS, DoubleFunction<Sample> at) {
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i * 0.1 < lastsS; i++) {
            samples.add(at.apply(i * 0.1));
        }
        samples.add(at.apply(lastsS));
        return new Flight("act", "full", List.of(figure("it", lastsS, samples)), samples, List.of());
    }

    public static FigureFlight figure(String id, double lastsS, List<Sample> samples) {
        return new FigureFlight(
                id,
                id,
                true,
                true,
                0,
                lastsS,
                samples.get(0).speedMps(),
                samples.get(samples.size() - 1).speedMps(),
                samples.stream().mapToDouble(s -> Math.abs(s.speedMps())).min().orElseThrow(),
                samples.stream().mapToDouble(s -> Math.abs(s.speedMps())).max().orElseThrow(),
                samples.stream().mapToDouble(s -> s.place().z()).min().orElseThrow(),
                samples.stream().mapToDouble(s -> s.place().z()).max().orElseThrow(),
                samples.stream().mapToDouble(Sample::g).max().orElseThrow(),
                samples.stream().mapToDouble(Sample::g).min().orElseThrow(),
                0,
                0,
                0,
                0,
                0.1 * samples.stream().filter(s -> s.up().z() < -0.1).count(),
                List.of(new ElementFlight(
                        0,
                        new Element.Line(Element.Until.SECONDS, 1, 1),
                        0,
                        0,
                        lastsS,
                        new Attitude(0, 0),
                        new Attitude(0, 0))));
    }

    static Sample sample(double tS, double zM, double speedMps, Vec nose, Vec up, double g) {
        return new Sample(tS, new Vec(0, 0, zM), speedMps, nose, up, g, 0, 0);
    }

    static List<CrowdFact> facts(Airframe airframe, Flight flight) {
        return allFacts(airframe, flight).facts();
    }

    static CrowdFacts allFacts(Airframe airframe, Flight flight) {
        return CrowdFacts.of(
                show(airframe, act(airframe, 1000, 100, List.of(Figure.of("it", "it")))), airframe, flight);
    }
}
