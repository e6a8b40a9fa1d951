package crowdline.follow;

import java.util.List;

/** A smooth way through places, at a speed that runs from one value to another with whatever is needed between. */
final class Wayfaring {
    private static final double STEP_S = 0.05;
    private static final int FINE = 400;

    private final List<V3> way;
    private final double fromMps;
    private final double toMps;
    private final double[] length;

    Wayfaring(List<V3> way, double fromMps, double toMps) {
        this.way = way;
        this.fromMps = fromMps;
        this.toMps = toMps;
        length = new double[FINE + 1];
        for (int i = 1; i <= FINE; i++) {
            length[i] = length[i - 1]
                    + at((i - 1) / (double) FINE).minus(at(i / (double) FINE)).length();
        }
    }

    /** Catmull–Rom through the places, for a share of the way. */
    private V3 at(double share) {
        double p = Math.min(Math.max(share, 0), 1) * (way.size() - 1);
        int i = Math.min((int) p, way.size() - 2);
        double t = p - i;
        V3 b = way.get(i);
        V3 c = way.get(i + 1);
        V3 a = i > 0 ? way.get(i - 1) : b.times(2).minus(c);
        V3 d = i + 2 < way.size() ? way.get(i + 2) : c.times(2).minus(b);
        V3 p1 = c.minus(a).times(t);
        V3 p2 = a.times(2).minus(b.times(5)).plus(c.times(4)).minus(d).times(t * t);
        V3 p3 = b.times(3).minus(a).minus(c.times(3)).plus(d).times(t * t * t);
        return b.plus(p1.plus(p2).plus(p3).times(0.5));
    }

    private V3 atLength(double metres) {
        int i = 1;
        while (i < FINE && length[i] < metres) {
            i++;
        }
        double share = (metres - length[i - 1]) / Math.max(length[i] - length[i - 1], 1e-9);
        return at((i - 1 + Math.min(Math.max(share, 0), 1)) / FINE);
    }

    void fly(double startS, double duration, Truth truth) {
        // Speed from, then a bump, then to: the bump takes up what is left of the way.
        double ramp = (fromMps + toMps) / 2 * duration;
        double bump = (length[FINE] - ramp) * Math.PI / 2 / duration;
        V3 last = way.get(0);
        V3 moving = new V3(0, 0, 0);
        for (double t = STEP_S; t < duration; t += STEP_S) {
            double s = t / duration;
            double metres = fromMps * t
                    + (toMps - fromMps) * s * t / 2
                    + bump * duration / Math.PI * (1 - Math.cos(Math.PI * s));
            V3 smooth = atLength(Math.max(0, Math.min(metres, length[FINE])));
            V3 now = new V3(smooth.x(), smooth.y(), Math.max(0, smooth.z()));
            moving = now.minus(last).times(1 / STEP_S);
            truth.instants.add(new Truth.Instant(startS + t, now, moving));
            last = now;
        }
        truth.instants.add(new Truth.Instant(startS + duration, way.get(way.size() - 1), moving));
    }
}
