package crowdline.sight;

import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.measure.Units;
import java.util.List;

/** What can be measured along the samples of one stretch of a flight. */
public final class FlownPath {
    /** A height this near the end of a climb counts as its end: levelling off is not climbing. */
    private static final double NEAR_END_M = 3;
    /** More than this the other way and it is another climb. */
    private static final double BREAKS_OFF_M = 15;
    /** Slower than this is drifting, not spinning, flicking or tumbling. */
    private static final double LEAST_WHIRL_DEG_PER_S = 45;

    private final List<Sample> samples;

    public FlownPath(List<Sample> samples) {
        this.samples = List.copyOf(samples);
    }

    /** The part from one time to another, both included. */
    public FlownPath between(double fromS, double toS) {
        return new FlownPath(samples.stream()
                .filter(s -> s.tS() >= fromS - 1e-6 && s.tS() <= toS + 1e-6)
                .toList());
    }

    public List<Sample> samples() {
        return samples;
    }

    boolean isEmpty() {
        return samples.isEmpty();
    }

    /**
     * A change of height in one go.
     *
     * @param heightM how much, 0 or more
     * @param lastsS how long it took
     * @param endS when it was over, on the clock of the samples
     */
    public record Leg(double heightM, double lastsS, double endS) {}

    public Leg greatestClimb() {
        return greatest(1);
    }

    public Leg greatestDrop() {
        return greatest(-1);
    }

    /** The greatest rise of sign × height that is not broken off by more than a little the other way. */
    private Leg greatest(int sign) {
        int low = 0;
        int peak = 0;
        int from = 0;
        int to = 0;
        for (int i = 1; i < samples.size(); i++) {
            boolean brokenOff = sign * (zM(peak) - zM(i)) > BREAKS_OFF_M;
            if (brokenOff || sign * zM(i) < sign * zM(low)) {
                low = i;
                peak = i;
            } else if (sign * zM(i) > sign * zM(peak)) {
                peak = i;
            }
            if (sign * (zM(peak) - zM(low)) > sign * (zM(to) - zM(from))) {
                from = low;
                to = peak;
            }
        }
        return from == to
                ? new Leg(0, 0, samples.isEmpty() ? 0 : samples.get(0).tS())
                : between(from, to, sign * (zM(to) - zM(from)));
    }

    /** From where it has truly left the one height to where it has nearly reached the other. */
    private Leg between(int from, int to, double heightM) {
        int last = from;
        while (last < to && Math.abs(zM(last + 1) - zM(from)) < NEAR_END_M) {
            last++;
        }
        int first = to;
        while (first > last && Math.abs(zM(first - 1) - zM(to)) < NEAR_END_M) {
            first--;
        }
        double endS = samples.get(first).tS();
        return new Leg(heightM, endS - samples.get(last).tS(), endS);
    }

    private double zM(int i) {
        return samples.get(i).place().z();
    }

    /** Every rise added up, metres. */
    public double totalClimbM() {
        double sum = 0;
        for (int i = 1; i < samples.size(); i++) {
            sum += Math.max(zM(i) - zM(i - 1), 0);
        }
        return sum;
    }

    /** Length of the path over the ground and in height, metres. */
    public double lengthM() {
        double sum = 0;
        for (int i = 1; i < samples.size(); i++) {
            sum += moved(i).length();
        }
        return sum;
    }

    private Vec moved(int i) {
        return samples.get(i).place().minus(samples.get(i - 1).place());
    }

    /** How far it moved tail first while its nose pointed steeply up, metres. */
    public double backwardsM() {
        double sum = 0;
        for (int i = 1; i < samples.size(); i++) {
            Vec nose = samples.get(i - 1).nose();
            if (nose.z() > 0.7) {
                sum += Math.max(-moved(i).dot(nose), 0);
            }
        }
        return sum;
    }

    /** The longest stretch, seconds, in which less than a share of the weight is felt in any direction. */
    public double floatingS(double lessThanG) {
        double longest = 0;
        double since = Double.NaN;
        for (int i = 1; i + 1 < samples.size(); i++) {
            double t = samples.get(i).tS();
            if (feltMps2(i) < lessThanG * Units.G_MPS2) {
                since = Double.isNaN(since) ? t : since;
                longest = Math.max(longest, t - since);
            } else {
                since = Double.NaN;
            }
        }
        return longest;
    }

    /** Acceleration against free fall, from how the path bends: forces across the nose count as well. */
    private double feltMps2(int i) {
        double before = samples.get(i).tS() - samples.get(i - 1).tS();
        double after = samples.get(i + 1).tS() - samples.get(i).tS();
        Vec in = moved(i);
        Vec out = moved(i + 1);
        double half = (before + after) / 2;
        Vec bend = out.times(1 / after).minus(in.times(1 / before)).times(1 / half);
        return bend.plus(new Vec(0, 0, Units.G_MPS2)).length();
    }

    /** Degrees turned between two times; the first and the last rate are carried on to the ends. */
    public double turnedDeg(Turning turning, double fromS, double toS) {
        List<Sample> inside = between(fromS, toS).samples();
        int n = inside.size();
        if (n < 2) {
            return 0;
        }
        double sum = 0;
        for (int i = 1; i < n; i++) {
            sum += turning.deg(inside.get(i - 1), inside.get(i));
        }
        return sum
                + (inside.get(0).tS() - fromS) * turning.rate(inside.get(0), inside.get(1))
                + (toS - inside.get(n - 1).tS()) * turning.rate(inside.get(n - 2), inside.get(n - 1));
    }

    /** Seconds between two times in which it turned fast, without the slowing down before a spin or a flick. */
    public double whirlingS(Turning turning, double fromS, double toS) {
        List<Sample> inside = between(fromS, toS).samples();
        double sum = 0;
        for (int i = 1; i < inside.size(); i++) {
            if (turning.rate(inside.get(i - 1), inside.get(i)) > LEAST_WHIRL_DEG_PER_S) {
                sum += inside.get(i).tS() - inside.get(i - 1).tS();
            }
        }
        return Math.min(
                sum
                        + (inside.isEmpty()
                                ? 0
                                : toS - inside.get(inside.size() - 1).tS()),
                toS - fromS);
    }
}
