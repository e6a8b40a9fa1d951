package crowdline.follow;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Attitude;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.List;

/** Plans small enough to look through. */
final class Small {
    private static final double MPS = 60;

    private enum Lines {
        NONE,
        TO_PLACE_OR_HEIGHT,
        TO_SPEED
    }

    private Small() {}

    /** Figures of so many bins: the first straight on at 300 m, and by turns up and down from there. */
    static FollowPlan plan(int... bins) {
        return plan(false, Lines.NONE, bins);
    }

    /**
     * The same, each with one line that ends ten bins before the figure does: level flight to a place, a climb or a descent to
     * a height.
     */
    static FollowPlan lines(int... bins) {
        return plan(false, Lines.TO_PLACE_OR_HEIGHT, bins);
    }

    /** The same, but each line is flown to a speed. */
    static FollowPlan linesToSpeed(int... bins) {
        return plan(false, Lines.TO_SPEED, bins);
    }

    /** The same, but of the first and the last figure only the time is known, as of a take-off and a landing. */
    static FollowPlan betweenTimed(int... bins) {
        return plan(true, Lines.NONE, bins);
    }

    /** One figure of 10 s that leads into another, each at a velocity of its own; they meet at the datum. */
    static FollowPlan kink(Vec beforeMps, Vec afterMps) {
        List<Sample> samples = new ArrayList<>();
        for (int i = -100; i <= 100; i++) {
            Vec velocity = i < 0 ? beforeMps : afterMps;
            Vec place = velocity.times(i * 0.1);
            samples.add(new Sample(10 + i * 0.1, place, MPS, new Vec(1, 0, 0), new Vec(0, 0, 1), 1, 1, 1));
        }
        List<FigureFlight> figures =
                List.of(figure("before", true, 0, 10, List.of()), figure("after", true, 10, 20, List.of()));
        return FollowPlan.of(new Flight("act", "full", figures, samples, List.of()));
    }

    private static FollowPlan plan(boolean timedEnds, Lines lines, int... bins) {
        List<FigureFlight> figures = new ArrayList<>();
        List<Sample> samples = new ArrayList<>();
        double start = 0;
        double z = 300;
        double x = -600;
        for (int f = 0; f < bins.length; f++) {
            double end = start + bins[f] * Bins.WIDTH_S;
            double climb = f % 2 == 0 ? 0 : f % 4 == 1 ? 30 : -30;
            for (double t = start; t < end - 1e-6; t += 0.1) {
                samples.add(new Sample(t, new Vec(x, 0, z), MPS, new Vec(1, 0, 0), new Vec(0, 0, 1), 1, 1, 1));
                x += MPS * 0.1;
                z += climb * 0.1;
            }
            boolean known = !timedEnds || (f > 0 && f < bins.length - 1);
            double lastS = 10 * Bins.WIDTH_S;
            double goalM = climb == 0 ? x - lastS * MPS : z - lastS * climb;
            List<ElementFlight> elements = switch (lines) {
                case NONE -> List.of();
                case TO_PLACE_OR_HEIGHT -> List.of(line(climb == 0, goalM, start, end - lastS));
                case TO_SPEED ->
                    List.of(flown(new Element.Line(Element.Until.KNOTS, Units.ktFromMps(MPS), 1), start, end - lastS));
            };
            figures.add(figure("f" + f, known, start, end, elements));
            start = end;
        }
        samples.add(new Sample(start, new Vec(x, 0, z), MPS, new Vec(1, 0, 0), new Vec(0, 0, 1), 1, 1, 1));
        return FollowPlan.of(new Flight("act", "full", figures, samples, List.of()));
    }

    private static ElementFlight line(boolean toPlace, double goalM, double start, double end) {
        Element.Line line = toPlace
                ? new Element.Line(Element.Until.ALONG_M, goalM, 1)
                : new Element.Line(Element.Until.FEET, goalM / Units.mFromFt(1), 1);
        return flown(line, start, end);
    }

    private static ElementFlight flown(Element.Line line, double start, double end) {
        return new ElementFlight(0, line, start, start, end, new Attitude(0, 0), new Attitude(0, 0));
    }

    private static FigureFlight figure(
            String id, boolean simulated, double start, double end, List<ElementFlight> elements) {
        return new FigureFlight(
                id, id, simulated, true, start, end, MPS, MPS, MPS, MPS, 0, 500, 1, 1, 400, 400, 0, 0, 0, elements);
    }
}
