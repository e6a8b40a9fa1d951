package crowdline.flight.shape;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Variation;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.ElementFlyer;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.Integrator;
import crowdline.flight.leg.Leg;
import crowdline.flight.leg.Steps;
import crowdline.show.figure.Element;

/** How long a hover roll is drawn: flown once and watched for when it may end. */
final class Hovers {
    /** It ends between these speeds, m/s: it is seen to slide back, still turning, and not for long. */
    private static final double SLIDES_MPS = -2;

    private static final double FASTEST_BACK_MPS = -7;
    private static final double SHORTEST_S = 0.5;
    private static final double LONGEST_S = 15;
    /** Times between which is chosen, seconds. */
    private static final double STEP_S = 0.1;
    /** Where the engine holds it up, it ends about when it was asked to, seconds. */
    private static final double ABOUT_S = 2;
    /** Cosine of how far off the line it came in on it may fall. */
    private static final double IN_LINE = 0.95;

    private final FlightState from;
    private final double askedS;
    private double slidS;
    private double heldS;
    private double slidAlong;
    private double heldAlong;
    private boolean isOver;

    private Hovers(FlightState from, double askedS) {
        this.from = from;
        this.askedS = askedS;
        slidS = askedS;
        heldS = askedS;
    }

    /**
     * The hover roll that lasts until it slides back, and ends with the canopy where it was or the other way, so that the
     * aircraft falls along the line it came in on.
     */
    static Element.HoverRoll drawn(Forces forces, Element.HoverRoll hover, FlightState at, Steps steps)
            throws CannotFly {
        FlightState from = new FlightState(0, at.place(), at.speedMps(), at.direction(), at.up());
        Hovers hovers = new Hovers(from, hover.seconds());
        Integrator watched = new Integrator(STEP_S, Integrator.COARSE, hovers::see, steps);
        new ElementFlyer(forces, watched, Variation.NONE).fly(new Element.HoverRoll(LONGEST_S, hover.power()), from);
        if (Math.max(hovers.slidAlong, hovers.heldAlong) < IN_LINE) {
            throw new CannotFly("has too little speed left to roll on its propeller", at);
        }
        return new Element.HoverRoll(hovers.slidAlong >= IN_LINE ? hovers.slidS : hovers.heldS, hover.power());
    }

    private void see(Leg leg, double tS, double legS, double[] y) {
        double seconds = Bends.tenths(legS);
        boolean isTenth = Math.abs(seconds - legS) < STEP_S / 10;
        if (isOver || !isTenth || seconds < SHORTEST_S) {
            return;
        }
        FlightState end = leg.after(tS, legS, y);
        double along = Math.abs(end.up().dot(from.up()));
        if (end.speedMps() < FASTEST_BACK_MPS) {
            heldAlong = 0;
            isOver = true;
        } else if (end.speedMps() < SLIDES_MPS && along > slidAlong) {
            slidAlong = along;
            slidS = seconds;
        } else if (Math.abs(seconds - askedS) < ABOUT_S && along > heldAlong) {
            heldAlong = along;
            heldS = seconds;
        }
    }
}
