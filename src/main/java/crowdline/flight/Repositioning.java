package crowdline.flight;

import crowdline.measure.Units;
import crowdline.show.Element;

/**
 * Round for the next run: a turn away from the crowd through more than half a circle, a line back towards the display
 * line, a turn on to it, and along it to the place wanted, flying the other way than before.
 */
final class Repositioning {
    private static final double CUT_IN_RAD = Math.toRadians(35);

    private final Forces forces;
    private final Element.Reposition wanted;

    Repositioning(Forces forces, Element.Reposition wanted) {
        this.forces = forces;
        this.wanted = wanted;
    }

    FlightState fly(FlightState start, ElementFlyer.Runner runner) throws CannotFly {
        boolean right = start.direction().x() >= 0;
        // Away from the crowd is to the left when flying right, and to the right when flying left.
        int turn = right ? 1 : -1;
        double bank = Math.toRadians(wanted.bankDeg());
        double home = right ? Math.PI : 0;
        FlightState from =
                start.facing(new Vec(right ? 1 : -1, 0, start.direction().z()), Vec.UP);

        double outHeading = (right ? 0 : Math.PI) + turn * (Math.PI + CUT_IN_RAD);
        FlightState turned =
                runner.run(leg(from, turn * bank, (t, y) -> turn * (y[4] - outHeading), false), from, "turn away");

        FlightState cutIn = turned.facing(turned.direction(), Vec.UP);
        FlightState near =
                runner.run(leg(cutIn, 0, (t, y) -> turnInDepthM(y[3], bank) - y[1], false), cutIn, "line back");

        double rest = angleTo(near.headingRad(), home);
        double sense = Math.signum(rest);
        double last = near.headingRad() + rest;
        FlightState on = rest == 0
                ? near
                : runner.run(leg(near, sense * bank, (t, y) -> sense * (y[4] - last), false), near, "turn in");

        FlightState along = on.facing(new Vec(right ? -1 : 1, 0, on.direction().z()), Vec.UP);
        double sign = right ? -1 : 1;
        return runner.run(leg(along, 0, (t, y) -> sign * (y[0] - wanted.alongM()), true), along, "run in");
    }

    /** How far off the display line the turn on to it must begin. */
    private static double turnInDepthM(double speedMps, double bankRad) {
        double radius = speedMps * speedMps / (Units.G_MPS2 * Math.tan(bankRad));
        return radius * (1 - Math.cos(CUT_IN_RAD));
    }

    private static double angleTo(double from, double to) {
        double d = to - from;
        return Math.atan2(Math.sin(d), Math.cos(d));
    }

    private GuidedLeg leg(FlightState from, double bankRad, StraightLeg.EndLaw end, boolean levelAtEnd) {
        GuidedLeg.Aim aim = new GuidedLeg.Aim(
                Units.mFromFt(wanted.heightFt()), Units.mpsFromKt(wanted.kt()), bankRad, wanted.power());
        return new GuidedLeg(forces, from, aim, end, levelAtEnd);
    }
}
