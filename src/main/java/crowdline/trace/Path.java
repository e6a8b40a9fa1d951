package crowdline.trace;

import crowdline.flight.leg.Sample;
import crowdline.measure.Units;
import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;

/** Where an aircraft was, at even steps of time, and how it moved; smoothed so far that noise of a receiver hardly shows. */
final class Path {
    /** Seconds between two points. */
    static final double STEP_S = 0.2;
    /** Seconds before and after a point over which its speed is taken. Less shows noise, more cuts corners. */
    private static final double HALF_SPAN_S = 0.7;
    /** Metres a second: slower, and noise decides where it flies to. */
    private static final double LEAST_MPS = 4;

    final double firstS;
    final int size;
    final double[] xM;
    final double[] yM;
    final double[] zM;
    final double[] mps;
    /** Where it flies to: parts of a unit vector. */
    final double[] tx;

    final double[] ty;
    final double[] tz;

    private Path(double[] tS, double[][] places) {
        firstS = tS[0];
        size = (int) Math.floor((tS[tS.length - 1] - firstS) / STEP_S) + 1;
        xM = new double[size];
        yM = new double[size];
        zM = new double[size];
        mps = new double[size];
        tx = new double[size];
        ty = new double[size];
        tz = new double[size];
        int low = 0;
        int high = 0;
        for (int i = 0; i < size; i++) {
            double t = firstS + i * STEP_S;
            while (low < tS.length - 1 && tS[low] < t - HALF_SPAN_S - 1e-9) {
                low++;
            }
            while (high < tS.length - 1 && tS[high + 1] <= t + HALF_SPAN_S + 1e-9) {
                high++;
            }
            // At one reading a second, the two around the point.
            int from = Math.max(0, Math.min(low, last(tS, t)));
            int to = Math.min(tS.length - 1, Math.max(high, last(tS, t) + 1));
            double[] vx = line(tS, places[0], from, to, t);
            double[] vy = line(tS, places[1], from, to, t);
            double[] vz = line(tS, places[2], from, to, t);
            xM[i] = vx[0];
            yM[i] = vy[0];
            zM[i] = vz[0];
            move(i, vx[1], vy[1], vz[1]);
        }
    }

    private void move(int i, double vx, double vy, double vz) {
        double v = Math.sqrt(vx * vx + vy * vy + vz * vz);
        mps[i] = v;
        if (v < LEAST_MPS && i > 0) {
            tx[i] = tx[i - 1];
            ty[i] = ty[i - 1];
            tz[i] = tz[i - 1];
        } else {
            double per = v > 0 ? 1 / v : 0;
            tx[i] = vx * per;
            ty[i] = vy * per;
            tz[i] = vz * per;
        }
    }

    private static int last(double[] tS, double t) {
        int low = 0;
        int high = tS.length - 1;
        while (low < high) {
            int mid = (low + high + 1) >>> 1;
            if (tS[mid] <= t) {
                low = mid;
            } else {
                high = mid - 1;
            }
        }
        return low;
    }

    /** The straight line that fits best: its value at a time, and its slope. */
    private static double[] line(double[] tS, double[] v, int from, int to, double at) {
        int n = to - from + 1;
        double t = 0;
        double m = 0;
        for (int i = from; i <= to; i++) {
            t += tS[i] / n;
            m += v[i] / n;
        }
        double tt = 0;
        double tv = 0;
        for (int i = from; i <= to; i++) {
            tt += (tS[i] - t) * (tS[i] - t);
            tv += (tS[i] - t) * (v[i] - m);
        }
        double slope = tt > 0 ? tv / tt : 0;
        return new double[] {m + slope * (at - t), slope};
    }

    /** @throws IllegalArgumentException if there are less than two readings at different times */
    static Path of(List<Reading> readings) {
        List<Reading> later = new ArrayList<>();
        for (Reading r : readings) {
            if (later.isEmpty() || r.tS() > later.get(later.size() - 1).tS() + 1e-6) {
                later.add(r);
            }
        }
        if (later.size() < 2) {
            throw new IllegalArgumentException("a path needs two places at different times");
        }
        double[] t = later.stream().mapToDouble(Reading::tS).toArray();
        Curve curve = new Curve(t, new double[][] {
            later.stream().mapToDouble(Reading::alongM).toArray(),
            later.stream().mapToDouble(Reading::awayM).toArray(),
            later.stream().mapToDouble(Reading::heightM).toArray()
        });
        return new Path(curve.tS, curve.places);
    }

    static Path flown(List<Sample> samples) {
        double[] t = samples.stream().mapToDouble(Sample::tS).toArray();
        return new Path(t, new double[][] {
            samples.stream().mapToDouble(s -> s.place().x()).toArray(),
            samples.stream().mapToDouble(s -> s.place().y()).toArray(),
            samples.stream().mapToDouble(s -> s.place().z()).toArray()
        });
    }

    double tS(int i) {
        return firstS + i * STEP_S;
    }

    /** The point at a time. */
    int at(double tS) {
        return (int) Math.round((tS - firstS) / STEP_S);
    }

    /** How steeply it climbs, degrees. */
    double climbDeg(int i) {
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, tz[i]))));
    }

    /** How fast the way it flies to changes, degrees a second. */
    double bendDegPerS(int i) {
        int a = Math.max(0, i - 2);
        int b = Math.min(size - 1, i + 2);
        double dot = tx[a] * tx[b] + ty[a] * ty[b] + tz[a] * tz[b];
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, dot)))) / Math.max(STEP_S, (b - a) * STEP_S);
    }

    /** How hard it bends: the acceleration across its way, m/s². */
    double bendMps2(int i) {
        return mps[i] * Math.toRadians(bendDegPerS(i));
    }

    /** How fast it turns over the ground, degrees a second, above 0 to the left. */
    double turnDegPerS(int i) {
        int a = Math.max(0, i - 2);
        int b = Math.min(size - 1, i + 2);
        return Math.toDegrees(Math.atan2(tx[a] * ty[b] - ty[a] * tx[b], tx[a] * tx[b] + ty[a] * ty[b]))
                / Math.max(STEP_S, (b - a) * STEP_S);
    }

    /** How far it turns over the ground from a point to another, degrees, above 0 to the left. */
    double turnedDeg(int from, int to) {
        double deg = 0;
        for (int i = from; i <= to; i++) {
            deg += turnDegPerS(i) * STEP_S;
        }
        return deg;
    }

    /** How far it banks in a level turn as fast as that, degrees, above 0 to the left. */
    double bankDeg(int i) {
        return Math.toDegrees(Math.atan(mps[i] * Math.toRadians(turnDegPerS(i)) / Units.G_MPS2));
    }
}
