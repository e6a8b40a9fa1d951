package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.show.figure.Element.Side;

/** Which way round a side is from where the aircraft flies. */
final class Sides {
    private Sides() {}

    /** +1 for the pilot's right, −1 for the left. */
    static int of(Side side, FlightState from) {
        return switch (side) {
            case RIGHT -> 1;
            case LEFT -> -1;
            case AWAY -> towardsAway(from);
            case CROWD -> -towardsAway(from);
        };
    }

    private static int towardsAway(FlightState from) {
        return from.rightWing().y() >= 0 ? 1 : -1;
    }
}
