package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.figure.Element;

/** Where a line ends: what it was to reach, as a function of the flight that changes sign there. */
final class LineEnd {
    private LineEnd() {}

    static StraightLeg.EndLaw of(Element.Line line, Forces forces, FlightState from) {
        return switch (line.until()) {
            case RADII, STALLS, ENTRY_HEIGHT, ENTRY_LINE ->
                throw new IllegalStateException("an open line has to be drawn before it is flown");
            case SECONDS -> throw new IllegalArgumentException("a line of seconds ends by the clock alone");
            case METRES -> {
                Vec start = from.place();
                yield (t, y) -> distance(y, start) - line.value();
            }
            case KNOTS -> {
                double target = Units.mpsFromKt(line.value());
                Vec d = from.direction();
                double across = Units.G_MPS2 * Math.hypot(d.x(), d.y());
                double trend = forces.alongMps2(
                        from.place().z(), from.speedMps(), d.x(), d.y(), d.z(), across, line.power(), 0);
                yield trend >= 0 ? (t, y) -> y[3] - target : (t, y) -> target - y[3];
            }
            case FEET ->
                reaching(2, Units.mFromFt(line.value()), from.direction().z());
            case ALONG_M -> reaching(0, line.value(), from.direction().x());
        };
    }

    private static double distance(double[] y, Vec start) {
        double dx = y[0] - start.x();
        double dy = y[1] - start.y();
        double dz = y[2] - start.z();
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** Ends when a coordinate passes a value in the direction it is going; at once when it is not going there. */
    private static StraightLeg.EndLaw reaching(int coordinate, double value, double going) {
        if (Math.abs(going) < 1e-6) {
            return (t, y) -> 0;
        }
        double sign = Math.signum(going);
        return (t, y) -> sign * (y[coordinate] - value);
    }
}
