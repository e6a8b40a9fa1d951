package crowdline.practice;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.sight.picture.Pose;
import java.util.List;

/**
 * How near to the crowd and to the ground a flight comes. One to practise on comes hardly nearer than its plan does.
 *
 * @param headsM the least distance beyond the display line that the aircraft would have after {@link #REACH_M} more of its way
 * @param lowestM the lowest height of figures above the datum
 */
record Margin(double headsM, double lowestM) {
    private static final double REACH_M = 300;
    /** So much comes of the wind and of a flight that is not quite as drawn; tuned. */
    private static final double NEARER_M = 25;

    private static final double LOWER_M = 30;

    static Margin of(Flight flight) {
        double heads = Double.POSITIVE_INFINITY;
        for (Sample sample : flight.samples()) {
            heads = Math.min(heads, heads(sample.place(), sample.nose()));
        }
        double lowest = flight.figures().stream()
                .filter(FigureFlight::simulated)
                .mapToDouble(FigureFlight::lowestM)
                .min()
                .orElse(0);
        return new Margin(heads, lowest);
    }

    private static double heads(Vec place, Vec nose) {
        return place.y() + REACH_M * Math.min(0, nose.y());
    }

    /** Whether a flight keeps about as far from the crowd and as high as this. */
    boolean isKeptBy(Flight flight) {
        Margin other = of(flight);
        return other.headsM >= headsM - NEARER_M && other.lowestM >= lowestM - LOWER_M;
    }

    /** Whether a way keeps as far from the crowd. */
    boolean isKeptBy(List<Pose> way) {
        return way.stream().allMatch(p -> heads(p.place(), p.nose()) >= headsM - NEARER_M);
    }
}
