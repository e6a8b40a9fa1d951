package crowdline.flight.leg;

import crowdline.flight.body.FlightState;

/** Thrown inside the prediction when an element cannot be flown; carries what to tell the user. */
public final class CannotFly extends Exception {
    private static final long serialVersionUID = 1;
    private final String why;
    private final transient FlightState where;

    public CannotFly(String why, FlightState where) {
        // Many are thrown while a figure is drawn, and nobody looks where.
        super(why, null, false, false);
        this.why = why;
        this.where = where;
    }

    public String why() {
        return why;
    }

    public FlightState where() {
        return where;
    }
}
