package crowdline.layout;

import crowdline.flight.body.FlightState;
import crowdline.measure.Units;
import crowdline.show.figure.Element;

/** Writes down what is flown to a beginning as elements, in numbers as round as a show file has them. */
record Runs(Climbing climbing) {
    /** Nothing is flown to further along the line, metres: a round number within what a show file takes for plausible. */
    static final double OUT_OF_SIGHT_M = 4_800;
    /** Feet: higher than that no element can be told to lead. */
    private static final double HIGHEST_FT = 60_000;
    /** A glider is told to stay as high as it can. */
    private static final double AS_HIGH_AS_IT_CAN_M = 400;

    /** Straight to a place along the line, on the way to the height and the speed of a beginning. */
    Element.Run to(FlightState at, double alongM, Entry to) {
        double mps = climbing.sinks() ? Gliding.aimedMps(at.speedMps(), to) : to.mps();
        return new Element.Run(Math.rint(alongM), Math.rint(to.awayM()), feet(at, to), knots(mps), 1);
    }

    /** Round by a level turn or one that climbs evenly, and straight to a beginning. */
    Element.Reposition round(FlightState at, double bankDeg, Entry to) {
        return new Element.Reposition(
                Math.rint(to.alongM()), Math.rint(to.awayM()), feet(at, to), knots(to.mps()), bankDeg, 1);
    }

    private double feet(FlightState at, Entry to) {
        double wanted = climbing.sinks()
                ? Math.max(Math.max(at.place().z(), to.heightM()), 0) + AS_HIGH_AS_IT_CAN_M
                : to.heightM();
        return Math.min(Math.rint(Units.ftFromM(wanted)), HIGHEST_FT);
    }

    private static double knots(double mps) {
        return Math.rint(Units.ktFromMps(mps) * 10) / 10;
    }

    /** A place along the line, no further from its middle than anybody sees. */
    static double seen(double alongM) {
        return Math.max(-OUT_OF_SIGHT_M, Math.min(alongM, OUT_OF_SIGHT_M));
    }
}
