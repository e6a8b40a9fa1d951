package crowdline.follow;

import crowdline.flight.leg.Sample;
import java.util.Arrays;
import java.util.List;

/** The predicted places at any time, on straight lines between samples. */
final class PredictedPath {
    private final double[] t;
    private final double[][] place;

    PredictedPath(List<Sample> samples) {
        t = samples.stream().mapToDouble(Sample::tS).toArray();
        place = new double[][] {
            samples.stream().mapToDouble(s -> s.place().x()).toArray(),
            samples.stream().mapToDouble(s -> s.place().y()).toArray(),
            samples.stream().mapToDouble(s -> s.place().z()).toArray()
        };
    }

    double x(double tS) {
        return at(0, tS);
    }

    double y(double tS) {
        return at(1, tS);
    }

    double z(double tS) {
        return at(2, tS);
    }

    private double at(int coordinate, double tS) {
        double[] p = place[coordinate];
        int low = Arrays.binarySearch(t, tS);
        int i = low >= 0 ? low : -low - 2;
        i = Math.min(Math.max(i, 0), t.length - 2);
        double share = Math.min(Math.max((tS - t[i]) / (t[i + 1] - t[i]), -1), 1);
        return p[i] + share * (p[i + 1] - p[i]);
    }
}
