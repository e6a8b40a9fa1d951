package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The receiver of the trials: noise, readings that never come, and what a receiver does over the top of a figure.
 *
 * @param hz readings a second
 * @param missing share of readings that never come
 * @param freezes how often in an act it freezes for four seconds and comes back with a jump
 * @param reckons how often it reckons on in a straight line for four seconds
 * @param drifts how often its height drifts off within two seconds, stays there for two, and comes back as slowly
 * @param speeds whether it tells its speed over the ground
 * @param slowM noise that comes and goes within half a minute, standard deviation in each direction, metres
 * @param heightOffM how far off the heights are from first to last, up or down
 */
record Radio(
        double hz,
        double missing,
        int freezes,
        int reckons,
        int drifts,
        boolean speeds,
        double slowM,
        double heightOffM) {
    Radio(double hz, double missing, int freezes, int reckons, int drifts, boolean speeds) {
        this(hz, missing, freezes, reckons, drifts, speeds, 0, 0);
    }

    private static final double NOISE_M = 2;
    private static final double SLOW_M = 3;
    private static final double SLOW_S = 30;
    private static final double NOISE_MPS = 0.3;
    private static final double FAULT_S = 4;
    private static final double JUMP_M = 250;
    private static final double JUMPED_S = 1.5;
    private static final double DRIFT_M = 120;
    private static final double DRIFT_S = 2;

    static Radio good(double hz) {
        return new Radio(hz, 0, 0, 0, 0, true);
    }

    /** The same with slow noise, and heights that are off by so much. */
    Radio slowly(double heightOffM) {
        return new Radio(hz, missing, freezes, reckons, drifts, speeds, SLOW_M, heightOffM);
    }

    List<Reading> receive(Truth truth, SplittableRandom random) {
        double first = truth.instants.get(0).tS();
        double last = truth.instants.get(truth.instants.size() - 1).tS();
        double[] freezeAt = times(freezes, first, last, random);
        double[] reckonAt = times(reckons, first, last, random);
        double[] driftAt = times(drifts, first, last, random);
        SplittableRandom slowly = slowM > 0 ? random.split() : new SplittableRandom(0);
        V3 slow = new V3(0, 0, 0);
        V3 always = V3.UP.times(slowly.nextBoolean() ? heightOffM : -heightOffM);
        double kept = Math.exp(-1 / hz / SLOW_S);
        List<Reading> out = new ArrayList<>();
        for (double t = first; t <= last; t += 1 / hz) {
            boolean lost = random.nextDouble() < missing;
            double frozen = since(freezeAt, t);
            double reckoned = since(reckonAt, t);
            V3 noise = new V3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(NOISE_M);
            V3 speedNoise =
                    new V3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(NOISE_MPS);
            if (slowM > 0) {
                V3 kick = new V3(slowly.nextGaussian(), slowly.nextGaussian(), slowly.nextGaussian());
                slow = slow.times(kept).plus(kick.times(slowM * Math.sqrt(1 - kept * kept)));
            }
            if (lost) {
                continue;
            }
            noise = noise.plus(slow).plus(always);
            Truth.Instant i = truth.at(t);
            if (frozen < FAULT_S) {
                Truth.Instant stuck = truth.at(t - frozen);
                out.add(reading(t, stuck.place().plus(always).plus(new V3(1, 1, 1)), stuck.groundMps()));
            } else if (frozen < FAULT_S + JUMPED_S) {
                // It comes back somewhere else and only then finds its place again.
                double left = JUMP_M * (1 - (frozen - FAULT_S) / JUMPED_S);
                out.add(reading(
                        t, i.place().plus(noise).plus(new V3(left * 0.8, left * 0.5, left * 0.3)), i.groundMps()));
            } else if (reckoned < FAULT_S) {
                Truth.Instant from = truth.at(t - reckoned);
                out.add(reading(
                        t, from.place().plus(always).plus(from.groundMps().times(reckoned)), from.groundMps()));
            } else {
                V3 off = V3.UP.times(DRIFT_M * drifted(since(driftAt, t)));
                out.add(reading(
                        t, i.place().plus(noise).plus(off), i.groundMps().plus(speedNoise)));
            }
        }
        return out;
    }

    /** How far it has drifted so long after that began, 0 to 1. */
    private static double drifted(double sinceS) {
        return Math.max(0, Math.min(1, Math.min(sinceS, 3 * DRIFT_S - sinceS) / DRIFT_S));
    }

    private Reading reading(double t, V3 p, V3 v) {
        return new Reading(t, p.x(), p.y(), p.z(), speeds ? (Double) v.x() : null, speeds ? (Double) v.y() : null);
    }

    private static double[] times(int n, double first, double last, SplittableRandom random) {
        double[] t = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = first + (last - first) * (i + 0.2 + 0.6 * random.nextDouble()) / n;
        }
        return t;
    }

    private static double since(double[] times, double t) {
        double since = Double.POSITIVE_INFINITY;
        for (double at : times) {
            if (t >= at) {
                since = Math.min(since, t - at);
            }
        }
        return since;
    }
}
