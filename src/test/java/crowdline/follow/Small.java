package crowdline.follow;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Sample;
import crowdline.flight.Vec;
import java.util.ArrayList;
import java.util.List;

/** Plans small enough to look through. */
final class Small {
    private static final double MPS = 60;

    private Small() {}

    /** Figures of so many bins: the first straight on at 300 m, and by turns up and down from there. */
    static FollowPlan plan(int... bins) {
        return plan(false, bins);
    }

    /** The same, but of the first and the last figure only the time is known, as of a take-off and a landing. */
    static FollowPlan betweenTimed(int... bins) {
        return plan(true, bins);
    }

    private static FollowPlan plan(boolean timedEnds, int... bins) {
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
            figures.add(figure("f" + f, known, start, end));
            start = end;
        }
        samples.add(new Sample(start, new Vec(x, 0, z), MPS, new Vec(1, 0, 0), new Vec(0, 0, 1), 1, 1, 1));
        return FollowPlan.of(new Flight("act", "full", figures, samples, List.of()));
    }

    private static FigureFlight figure(String id, boolean simulated, double start, double end) {
        return new FigureFlight(
                id, id, simulated, true, start, end, MPS, MPS, MPS, MPS, 0, 500, 1, 1, 400, 400, 0, 0, 0, List.of());
    }
}
