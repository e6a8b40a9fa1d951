package crowdline.flight;

import crowdline.flight.air.Air;
import crowdline.flight.air.DensityTable;
import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.ElementFlyer;
import crowdline.flight.leg.Extremes;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.Integrator;
import crowdline.flight.leg.Look;
import crowdline.flight.leg.LoopShape;
import crowdline.flight.leg.Recorder;
import crowdline.flight.leg.Sample;
import crowdline.flight.leg.Steps;
import crowdline.flight.shape.Shaped;
import crowdline.flight.shape.Shaper;
import crowdline.measure.Units;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Usual;
import crowdline.show.figure.Element;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Flies one figure from anywhere, to see what it needs and where it leads. For one thread. */
public final class FigureTrial {
    private static final double LOOK_S = 0.25;
    private static final double PATH_S = 0.1;

    private final Airframe airframe;
    private final Usual usual;
    private final Wind wind;
    private final Forces forces;
    private final Shaper shaper;
    private final Steps steps = new Steps();

    /**
     * What came of a trial.
     *
     * @param elements with every number they were flown with
     * @param end where the aircraft is left; where it began if it could not be flown
     * @param seconds how long it took
     * @param box the space it took
     * @param closes false where a loop ends further on than it began, as it had not the speed for more
     * @param low what it lacks where it comes out lower than it began though it was to come out there, in a sentence that
     *     follows the figure's name; null if it does not
     * @param lack what is missing to fly it, in a sentence that follows the figure's name; null if it was flown
     */
    public record Outcome(
            List<Element> elements,
            FlightState end,
            double seconds,
            Box box,
            boolean closes,
            @Nullable String low,
            @Nullable String lack) {
        public Outcome {
            elements = List.copyOf(elements);
        }

        /** Whether it was flown as people expect to see it. */
        public boolean isWell() {
            return flown() && closes && low == null;
        }

        /** Whether it was flown to its end. */
        public boolean flown() {
            return lack == null;
        }
    }

    /**
     * The space a figure took, metres, and its speeds.
     *
     * @param leftM least place on the A-axis
     * @param rightM greatest place on the A-axis
     * @param nearestM least distance beyond the display line; below 0 it is over it, towards the crowd
     * @param farthestM greatest distance beyond it
     * @param lowestM above the datum
     * @param highestM above the datum
     * @param slowestMps airspeed, m/s
     * @param fastestMps airspeed, m/s
     */
    public record Box(
            double leftM,
            double rightM,
            double nearestM,
            double farthestM,
            double lowestM,
            double highestM,
            double slowestMps,
            double fastestMps) {}

    public FigureTrial(Airframe airframe, Air air) {
        this.airframe = airframe;
        usual = airframe.usual();
        wind = air.wind();
        forces = new Forces(Body.of(airframe, Variation.NONE), new DensityTable(air.atmosphere()), air.wind());
        shaper = new Shaper(forces, airframe, steps);
    }

    public Airframe airframe() {
        return airframe;
    }

    /** How its displays are usually flown. */
    public Usual usual() {
        return usual;
    }

    /** How many steps were integrated so far: how much was flown. */
    public long steps() {
        return steps.taken();
    }

    /** Forgets what was flown before, but for how much it was. */
    public void forget() {
        shaper.forget();
    }

    /** From so many steps on figures are drawn with fewer tries. */
    public void hurriesFrom(long taken) {
        shaper.hurriesFrom(taken);
    }

    /** How fast the air moves towards the commentator's right at the ground, m/s. */
    public double windAlongMps() {
        return wind.alongMps(0);
    }

    /** Speed at which the wing just carries the weight at a height, m/s. */
    public double stallMps(double heightM) {
        return forces.body.stallMps(forces.rho(heightM));
    }

    /** How steeply it climbs at full power with its speed held, sine of the path angle; below 0 it sinks. */
    public double climbs(double speedMps, double heightM) {
        double along = forces.alongMps2(heightM, speedMps, 1, 0, 0, Units.G_MPS2, 1, 0);
        return along / Units.G_MPS2;
    }

    /** How soon it slows down in level flight with the power off, m/s². */
    public double slowsMps2(double speedMps, double heightM) {
        return -forces.alongMps2(heightM, speedMps, 1, 0, 0, Units.G_MPS2, 0, 0);
    }

    /**
     * Flies what the catalogue has as the aircraft would: with the power it takes, and only where wing and airframe carry
     * it.
     */
    public Outcome drawn(List<Element> elements, FlightState from) {
        return drawn(() -> shaper.shape(elements, from), elements, from, true);
    }

    /** The same sooner: what is missing does not say how much more speed would do. */
    public Outcome drawnIfItCan(List<Element> elements, FlightState from) {
        return drawn(() -> shaper.shapeIfItCan(elements, from), elements, from, false);
    }

    /** Draws a figure. */
    private interface Draws {
        Shaped shaped() throws CannotFly;
    }

    private Outcome drawn(Draws draws, List<Element> elements, FlightState from, boolean saysWhatWouldDo) {
        try {
            Shaped shaped = draws.shaped();
            boolean closes = !Shaper.isOneLoop(elements) || shaped.topShare() >= LoopShape.CLOSES_DOWN_TO;
            String low = shaped.isLow() ? shaper.low(shaped, elements, from, saysWhatWouldDo) : null;
            return outcome(shaped.elements(), from, shaped.end(), shaped.extremes(), closes, low);
        } catch (CannotFly e) {
            return new Outcome(elements, from, 0, nothing(from), false, null, e.why());
        }
    }

    /** Flies elements as they stand, or draws them where they are open. */
    public Outcome fly(List<Element> elements, FlightState from) {
        if (elements.stream().anyMatch(Element::isOpen)) {
            return drawn(elements, from);
        }
        try {
            Extremes extremes = new Extremes();
            Look look = Look.atPathAndLoad();
            ElementFlyer flyer = new ElementFlyer(
                    forces,
                    new Integrator(
                            LOOK_S,
                            Integrator.COARSE,
                            (leg, tS, legS, y) -> {
                                leg.look(legS, y, look);
                                extremes.see(tS, y, look);
                            },
                            steps),
                    Variation.NONE);
            FlightState at = from;
            for (Element element : elements) {
                at = flyer.fly(element, at);
            }
            return outcome(elements, from, at, extremes, true, null);
        } catch (CannotFly e) {
            return new Outcome(elements, from, 0, nothing(from), false, null, e.why());
        }
    }

    /**
     * The path of a figure, a sample every tenth of a second; none if it cannot be flown from there.
     *
     * @param elements drawn where they are open
     */
    public List<Sample> path(List<Element> elements, FlightState from) {
        try {
            Recorder recorder = new Recorder(PATH_S);
            ElementFlyer flyer =
                    new ElementFlyer(forces, new Integrator(PATH_S, Integrator.COARSE, recorder), Variation.NONE);
            FlightState at = from;
            for (Element element : shaper.shape(elements, from).elements()) {
                at = flyer.fly(element, at);
            }
            return List.copyOf(recorder.samples());
        } catch (CannotFly e) {
            return List.of();
        }
    }

    private static Outcome outcome(
            List<Element> elements,
            FlightState from,
            FlightState end,
            Extremes e,
            boolean closes,
            @Nullable String low) {
        Box box = new Box(
                Math.min(e.leastAlongM(), from.place().x()),
                Math.max(e.greatestAlongM(), from.place().x()),
                Math.min(e.nearestM(), from.place().y()),
                Math.max(e.farthestM(), from.place().y()),
                Math.min(e.lowestM(), from.place().z()),
                Math.max(e.highestM(), from.place().z()),
                Math.min(e.leastMps(), from.speedMps()),
                Math.max(e.greatestMps(), from.speedMps()));
        return new Outcome(elements, end, end.tS() - from.tS(), box, closes, low, null);
    }

    private static Box nothing(FlightState from) {
        Vec p = from.place();
        return new Box(p.x(), p.x(), p.y(), p.y(), p.z(), p.z(), from.speedMps(), from.speedMps());
    }
}
