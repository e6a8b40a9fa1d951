package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/**
 * How well anybody could follow flights of a trial. Who is asked here is told the flight's own path, speeds, tempo and wind, and how
 * far the receiver is off. Not told are two things that nobody can know before they show: when a figure ends, but that it is about when
 * it is expected to; and whether the order has changed.
 *
 * <p>A boundary moved by some seconds is the same path with the straight line before it drawn out or cut short. The chance of each
 * move is weighed by all readings so far; the boundary is said when it is more likely behind than ahead. With hindsight it is the
 * mean of what is left after four seconds. A change is said when the path has left the one that the same pilot, in the same state,
 * would have flown as planned: by 10 m, which is what a receiver's noise can feign, or by 50 m, which is what pilots differ by.
 */
final class Bound {
    /** Seconds: how well it is known when a figure ends, from a place kept to 30 to 60 m at such speeds. */
    private static final double END_S = 0.8;

    private static final double STEP_S = 0.05;
    private static final int STEPS = 50;
    private static final double AFTER_S = 4;
    /** Metres: a receiver's noise, and what gusts move an aircraft by. */
    private static final double NOISE_M = 3;
    /** Metres a second: gusts. */
    private static final double GUST_MPS = 1.4;
    /** Seconds for which a gust lasts, so that a reading within counts as less. */
    private static final double GUST_S = 3;

    private static final double LEVEL_S = 5;

    private final List<Double> live = new ArrayList<>();
    private final List<Double> afterwards = new ArrayList<>();
    private final List<Double> seen10S = new ArrayList<>();
    private final List<Double> seen50S = new ArrayList<>();
    private double allS;
    private double boundariesS;
    private double changed10S;
    private double changed50S;

    /** Counts one flight, and how the same pilot would have flown it as planned. */
    void count(Truth truth, Truth asPlanned, List<Reading> log, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        allS += truth.endS() - truth.instants.get(0).tS();
        int changed = firstChange(truth, asPlanned);
        for (int i = 1; i < truth.flown.size(); i++) {
            if (i != changed && truth.flown.get(i).figure() >= 0) {
                boundary(truth, truth.flown.get(i).startS(), END_S * Variety.bell(random), log);
            }
        }
        if (changed >= 0) {
            double startS = truth.flown.get(changed).startS();
            double endS = truth.flown.get(changed).endS();
            double ten = leaves(truth, asPlanned, startS, endS, 10);
            double fifty = leaves(truth, asPlanned, startS, endS, 50);
            seen10S.add(ten);
            seen50S.add(fifty);
            changed10S += ten;
            changed50S += fifty;
        }
    }

    /** The first of the figures flown that the plan does not have there; −1 if there is none. */
    private static int firstChange(Truth truth, Truth asPlanned) {
        for (int i = 0; i < Math.min(truth.flown.size(), asPlanned.flown.size()); i++) {
            if (truth.flown.get(i).figure() != asPlanned.flown.get(i).figure()) {
                return i;
            }
        }
        return -1;
    }

    /** Seconds after which two paths that were one are so far apart. */
    private static double leaves(Truth truth, Truth asPlanned, double fromS, double toS, double farM) {
        double last = Math.min(
                toS, asPlanned.instants.get(asPlanned.instants.size() - 1).tS());
        for (double t = fromS; t < last; t += STEP_S) {
            if (truth.at(t).place().minus(asPlanned.at(t).place()).length() > farM) {
                return t - fromS;
            }
        }
        return last - fromS;
    }

    /** @param expectedS how much later than it comes it was expected */
    private void boundary(Truth truth, double boundaryS, double expectedS, List<Reading> log) {
        V3 off = level(truth, boundaryS, log);
        double[] weight = new double[2 * STEPS + 1];
        for (int k = -STEPS; k <= STEPS; k++) {
            double shift = (k * STEP_S - expectedS) / END_S;
            weight[k + STEPS] = -shift * shift / 2;
        }
        double saidS = Double.NaN;
        int next = 0;
        while (next < log.size() && log.get(next).tS() < boundaryS - AFTER_S) {
            next++;
        }
        for (double t = boundaryS - AFTER_S; t < boundaryS + AFTER_S; t += STEP_S) {
            while (next < log.size() && log.get(next).tS() <= t) {
                double newS =
                        next == 0 ? 1 : log.get(next).tS() - log.get(next - 1).tS();
                weigh(truth, boundaryS, log.get(next++), newS, off, weight);
            }
            if (Double.isNaN(saidS) && behind(weight, t - boundaryS) > 0.5) {
                saidS = t;
            }
        }
        double error = Double.isNaN(saidS) ? AFTER_S : Math.abs(saidS - boundaryS);
        live.add(error);
        boundariesS += error;
        afterwards.add(Math.abs(mean(weight)));
    }

    /** How far the receiver is off before the boundary. */
    private static V3 level(Truth truth, double boundaryS, List<Reading> log) {
        V3 sum = new V3(0, 0, 0);
        int n = 0;
        for (Reading r : log) {
            if (r.tS() < boundaryS && r.tS() > boundaryS - LEVEL_S) {
                sum = sum.plus(new V3(r.alongM(), r.awayM(), r.heightM())
                        .minus(truth.at(r.tS()).place()));
                n++;
            }
        }
        return n == 0 ? sum : sum.times(1.0 / n);
    }

    private static void weigh(Truth truth, double boundaryS, Reading r, double newS, V3 off, double[] weight) {
        V3 place = new V3(r.alongM(), r.awayM(), r.heightM()).minus(off);
        for (int k = -STEPS; k <= STEPS; k++) {
            Truth.Instant i = moved(truth, boundaryS, k * STEP_S, r.tS());
            double d = place.minus(i.place()).length() / NOISE_M;
            double misfit = d * d;
            Double along = r.alongMps();
            Double away = r.awayMps();
            if (along != null && away != null) {
                double v = Math.hypot(
                                along - i.groundMps().x(), away - i.groundMps().y())
                        / GUST_MPS;
                misfit += v * v * Math.min(1, newS / GUST_S);
            }
            // A fault of the receiver is known to be one.
            weight[k + STEPS] -= Math.min(misfit, 50) / 2;
        }
    }

    /** The flight with the boundary so much later, on the line it was on, or earlier. */
    private static Truth.Instant moved(Truth truth, double boundaryS, double laterS, double t) {
        Truth.Instant at = truth.at(boundaryS);
        if (t < boundaryS + Math.min(0, laterS)) {
            return truth.at(t);
        }
        if (t < boundaryS + laterS) {
            return new Truth.Instant(t, at.place().plus(at.groundMps().times(t - boundaryS)), at.groundMps());
        }
        V3 shift = laterS > 0
                ? at.groundMps().times(laterS)
                : truth.at(boundaryS + laterS).place().minus(at.place());
        Truth.Instant same = truth.at(t - laterS);
        return new Truth.Instant(t, same.place().plus(shift), same.groundMps());
    }

    private static double behind(double[] weight, double sinceS) {
        return share(weight, s -> s <= sinceS ? 1 : 0);
    }

    private static double mean(double[] weight) {
        return share(weight, s -> s);
    }

    /** The mean of something over the seconds by which it may be off, weighed by their logarithms. */
    private static double share(double[] weight, DoubleUnaryOperator of) {
        double most = Arrays.stream(weight).max().orElseThrow();
        double all = 0;
        double sum = 0;
        for (int k = -STEPS; k <= STEPS; k++) {
            double p = Math.exp(weight[k + STEPS] - most);
            all += p;
            sum += p * of.applyAsDouble(k * STEP_S);
        }
        return sum / all;
    }

    void add(Bound other) {
        live.addAll(other.live);
        afterwards.addAll(other.afterwards);
        seen10S.addAll(other.seen10S);
        seen50S.addAll(other.seen50S);
        allS += other.allS;
        boundariesS += other.boundariesS;
        changed10S += other.changed10S;
        changed50S += other.changed50S;
    }

    private static double quantile(List<Double> values, double q) {
        double[] sorted = values.stream().mapToDouble(d -> d).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.min(sorted.length - 1, q * sorted.length)];
    }

    /** Seconds by which boundaries are told wrongly live, such a share of them at most. */
    double liveS(double share) {
        return quantile(live, share);
    }

    /** The same with hindsight. */
    double afterwardsS(double share) {
        return quantile(afterwards, share);
    }

    /** Seconds until such a share of the changes shows: by a receiver's noise, or where pilots differ. */
    double changeShowsS(double share, boolean pilotsDiffer) {
        return quantile(pilotsDiffer ? seen50S : seen10S, share);
    }

    /** Share of the time that is right at best, and how exact boundaries and changes can be, as the median and nine in ten. */
    String line(String name) {
        return String.format(
                Locale.ROOT,
                "%-36s at best right %.2f %%, %.2f %% where pilots differ; boundaries live %.2f %.2f, looked back at %.2f %.2f; changes show after %.1f %.1f, %.1f %.1f",
                name,
                100 - 100 * (boundariesS + changed10S) / allS,
                100 - 100 * (boundariesS + changed50S) / allS,
                quantile(live, 0.5),
                quantile(live, 0.9),
                quantile(afterwards, 0.5),
                quantile(afterwards, 0.9),
                quantile(seen10S, 0.5),
                quantile(seen10S, 0.9),
                quantile(seen50S, 0.5),
                quantile(seen50S, 0.9));
    }
}
