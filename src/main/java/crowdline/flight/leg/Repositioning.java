package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.figure.Element;

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

    /** @param planning flies what is only thought of */
    FlightState fly(FlightState start, ElementFlyer.Runner runner, ElementFlyer.Runner planning) throws CannotFly {
        boolean right = start.direction().x() >= 0;
        double back = right ? -1 : 1;
        // Where it would come out beyond the place, it first flies on; with another speed by then, so it is thought
        // twice.
        double onM = 0;
        for (int i = 0; i < 3; i++) {
            FlightState out = roundFrom(further(start, onM, back, planning), right, planning);
            double before = onM;
            onM = Math.max(onM + back * (out.place().x() - wanted.alongM()), 0);
            if (onM == before) {
                break;
            }
        }
        FlightState on = roundFrom(further(start, onM, back, runner), right, runner);
        FlightState along = on.facing(new Vec(back, 0, on.direction().z()), Vec.UP);
        return runner.run(leg(along, 0, (t, y) -> back * (y[0] - wanted.alongM()), true), along, "run in");
    }

    private FlightState further(FlightState start, double metres, double back, ElementFlyer.Runner runner)
            throws CannotFly {
        if (metres == 0) {
            return start;
        }
        FlightState ahead = start.facing(new Vec(-back, 0, start.direction().z()), Vec.UP);
        double reached = start.place().x() - back * metres;
        return runner.run(leg(ahead, 0, (t, y) -> back * (reached - y[0]), false), ahead, "run out");
    }

    /** Round and on to the display line. */
    private FlightState roundFrom(FlightState start, boolean right, ElementFlyer.Runner runner) throws CannotFly {
        // Away from the crowd is to the left when flying right, and to the right when flying left.
        int turn = right ? 1 : -1;
        double bank = Math.toRadians(wanted.bankDeg());
        double home = right ? Math.PI : 0;
        FlightState from = start.facing(start.direction(), Vec.UP);
        double heading = from.headingRad();
        double begin = !right && heading < 0 ? heading + 2 * Math.PI : heading;
        double round = turn * ((right ? 0 : Math.PI) + turn * (Math.PI + CUT_IN_RAD) - begin);
        FlightState turned =
                runner.run(leg(from, turn * bank, (t, y) -> turn * (y[4] - heading) - round, false), from, "turn away");

        FlightState cutIn = turned.facing(turned.direction(), Vec.UP);
        FlightState near = runner.run(
                leg(cutIn, 0, (t, y) -> wanted.awayM() + turnInDepthM(y[2], y[3], bank) - y[1], false),
                cutIn,
                "line back");

        double rest = angleTo(near.headingRad(), home);
        double sense = Math.signum(rest);
        double last = near.headingRad() + rest;
        return rest == 0
                ? near
                : runner.run(leg(near, sense * bank, (t, y) -> sense * (y[4] - last), false), near, "turn in");
    }

    /** How far off the display line the turn on to it must begin. */
    private double turnInDepthM(double heightM, double speedMps, double bankRad) {
        double tan = GuidedLeg.carriedTan(forces, heightM, Math.max(speedMps, 1), Math.tan(bankRad));
        double radius = speedMps * speedMps / (Units.G_MPS2 * tan);
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
