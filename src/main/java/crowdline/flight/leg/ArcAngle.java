package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.show.figure.Element;
import java.util.Objects;

/** Through which angle an arc goes: as given, or until it points where it was to point. */
final class ArcAngle {
    private ArcAngle() {}

    /**
     * The angle, rad, from 0 to 2π.
     *
     * @param sign +1 to pull, −1 to push
     * @throws CannotFly when the arc never points where it was to point
     */
    static double rad(Element.Arc arc, FlightState from, int sign) throws CannotFly {
        Double degrees = arc.degrees();
        if (degrees != null) {
            return Math.toRadians(degrees);
        }
        // Along the arc, T_z = cos θ T0_z ± sin θ U0_z = r cos(θ − φ0): the first θ ahead where it is as wanted.
        double toPath = Objects.requireNonNull(arc.toPathDeg());
        double wanted = Math.sin(Math.toRadians(toPath));
        double reach = Math.hypot(from.direction().z(), from.up().z());
        double phase = Math.atan2(sign * from.up().z(), from.direction().z());
        double ratio = reach < 1e-12 ? 2 : wanted / reach;
        if (Math.abs(ratio) > 1 + 1e-9) {
            throw new CannotFly("the arc never points " + Math.round(toPath) + "° from here", from);
        }
        double half = Math.acos(Math.min(Math.max(ratio, -1), 1));
        double first = ahead(phase - half);
        double second = ahead(phase + half);
        return Math.min(first, second);
    }

    /** The same angle brought into [0, 2π); what is already reached to a millionth counts as 0. */
    private static double ahead(double angle) {
        double turn = 2 * Math.PI;
        double a = angle - turn * Math.floor(angle / turn);
        return Math.min(a, turn - a) < 1e-6 ? 0 : a;
    }
}
