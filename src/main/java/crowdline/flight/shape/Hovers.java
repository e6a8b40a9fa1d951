package crowdline.flight.shape;

import crowdline.flight.body.FlightState;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.ElementFlyer;
import crowdline.show.figure.Element;

/** How long a hover roll is drawn. */
final class Hovers {
    /** It ends between these speeds, m/s: it is seen to slide back, still turning, and not for long. */
    private static final double SLIDES_MPS = -2;

    private static final double FASTEST_BACK_MPS = -7;
    private static final double LONGEST_S = 15;
    /** Where the engine holds it up, it ends about when it was asked to, seconds. */
    private static final double ABOUT_S = 2;
    /** Cosine of how far off the line it came in on it may fall. */
    private static final double IN_LINE = 0.95;

    private final ElementFlyer quiet;

    /** @param quiet flies what is only thought of */
    Hovers(ElementFlyer quiet) {
        this.quiet = quiet;
    }

    /**
     * The hover roll that lasts until it slides back, and ends with the canopy where it was or the other way, so that the
     * aircraft falls along the line it came in on.
     */
    Element.HoverRoll drawn(Element.HoverRoll hover, FlightState at) throws CannotFly {
        Element.HoverRoll slid = hover;
        Element.HoverRoll held = hover;
        double slidAlong = 0;
        double heldAlong = 0;
        for (double s = 0.5; s <= LONGEST_S; s += 0.1) {
            Element.HoverRoll tried = new Element.HoverRoll(Bends.tenths(s), hover.power());
            FlightState end = quiet.fly(tried, at);
            double along = Math.abs(end.up().dot(at.up()));
            if (end.speedMps() < FASTEST_BACK_MPS) {
                heldAlong = 0;
                break;
            } else if (end.speedMps() < SLIDES_MPS && along > slidAlong) {
                slidAlong = along;
                slid = tried;
            } else if (Math.abs(s - hover.seconds()) < ABOUT_S && along > heldAlong) {
                heldAlong = along;
                held = tried;
            }
        }
        if (Math.max(slidAlong, heldAlong) < IN_LINE) {
            throw new CannotFly("has too little speed left to roll on its propeller", at);
        }
        return slidAlong >= IN_LINE ? slid : held;
    }
}
