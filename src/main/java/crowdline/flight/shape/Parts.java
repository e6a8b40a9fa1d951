package crowdline.flight.shape;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Variation;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.ElementFlyer;
import crowdline.flight.leg.Extremes;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.Integrator;
import crowdline.flight.leg.Leg;
import crowdline.flight.leg.Look;
import crowdline.flight.leg.Steps;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Flies the elements of figures that are tried, each once from each place: a figure tried again with other numbers often
 * begins the same way, and another figure too. For one thread.
 */
final class Parts {
    /** How often it is looked at, seconds: extremes of a pull are found to some hundredths of a g. */
    private static final double LOOK_S = 0.2;
    /** No element of a figure takes longer, seconds. */
    static final double LONGEST_S = 45;
    /** Falling back down a line up, m/s. */
    private static final double STOPPED_MPS = -1;
    /** So many are kept; a whole act takes about half as many. */
    private static final int MOST_KEPT = 20_000;

    private final Steps steps;
    private final Limits limits;
    private final ElementFlyer watched;
    private final ElementFlyer quiet;
    private final Map<Place, Came> flown = new HashMap<>();
    private final Look look = Look.atPathAndLoad();
    private Extremes seen = new Extremes();
    private boolean over;
    private double beganS;

    /** One element flown from one place. */
    private record Place(Element element, FlightState from, boolean isWatched, boolean over) {}

    /** What came of it: where it ends, or why it does not. */
    private record Came(
            @Nullable FlightState end,
            Extremes seen,
            @Nullable Fault fault,
            @Nullable CannotFly cannot) {}

    /** An element flown to its end, with what was seen on its way. */
    record Part(FlightState end, Extremes seen) {}

    /** Stops flying in the middle of an element. */
    static final class Stop extends Exception {
        private static final long serialVersionUID = 1;
        final Fault fault;

        Stop(Fault fault) {
            super(null, null, false, false);
            this.fault = fault;
        }
    }

    /** The same through what knows nothing of it. */
    private static final class Broken extends RuntimeException {
        private static final long serialVersionUID = 1;
        final Fault fault;

        Broken(Fault fault) {
            super(null, null, false, false);
            this.fault = fault;
        }
    }

    Parts(Forces forces) {
        this(forces, new Steps());
    }

    Parts(Forces forces, Steps steps) {
        this.steps = steps;
        limits = new Limits(forces.body);
        watched = new ElementFlyer(forces, new Integrator(LOOK_S, Integrator.COARSE, this::see, steps), Variation.NONE);
        quiet = new ElementFlyer(
                forces,
                new Integrator(Integrator.NO_GRID, Integrator.COARSE, (leg, tS, legS, y) -> {}, steps),
                Variation.NONE);
    }

    /**
     * Flies an element within the limits.
     *
     * @param goesOver whether it is the turning over of a line up
     * @throws Stop when it goes beyond them
     */
    Part flown(Element element, FlightState from, boolean goesOver) throws Stop, CannotFly {
        Came came = came(new Place(element, from, true, goesOver));
        if (came.fault() != null) {
            throw new Stop(came.fault());
        }
        return new Part(end(came), came.seen());
    }

    /** Forgets what was flown. */
    void forget() {
        flown.clear();
    }

    /** Counts what is flown. */
    Steps steps() {
        return steps;
    }

    /** Where an element ends that is only thought of. */
    FlightState thought(Element element, FlightState from) throws CannotFly {
        return end(came(new Place(element, from, false, false)));
    }

    private static FlightState end(Came came) throws CannotFly {
        FlightState end = came.end();
        if (end == null) {
            throw Objects.requireNonNull(came.cannot());
        }
        return end;
    }

    private Came came(Place place) {
        Came known = flown.get(place);
        if (known == null) {
            if (flown.size() >= MOST_KEPT) {
                flown.clear();
            }
            known = fly(place);
            flown.put(place, known);
        }
        return known;
    }

    private Came fly(Place place) {
        seen = new Extremes();
        over = place.over();
        beganS = place.from().tS();
        try {
            ElementFlyer flyer = place.isWatched() ? watched : quiet;
            return new Came(flyer.fly(place.element(), place.from()), seen, null, null);
        } catch (Broken e) {
            return new Came(null, seen, e.fault, null);
        } catch (CannotFly e) {
            return new Came(null, seen, null, e);
        }
    }

    private void see(Leg leg, double tS, double legS, double[] y) {
        leg.look(legS, y, look);
        seen.see(tS, y, look);
        Fault fault = limits.broken(seen, over);
        if (fault == null && look.keptAnyway() && look.speedMps() < STOPPED_MPS) {
            fault = Fault.of(Fault.Kind.ENERGY, "has no speed left on its way up");
        }
        if (fault == null && tS - beganS > LONGEST_S) {
            fault = Fault.of(
                    Fault.Kind.NEVER_SLOWS,
                    "takes too long: after %.0f s in one piece it still has %.0f kt",
                    LONGEST_S,
                    Units.ktFromMps(look.speedMps()));
        }
        if (fault != null) {
            throw new Broken(fault);
        }
    }
}
