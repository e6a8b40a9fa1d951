package crowdline.follow;

import java.util.ArrayDeque;
import java.util.Deque;

/** The path of the last seconds, looked at once a second, and how well it fits that of a figure which has come to some bin by now. */
final class PathSoFar {
    /** How many looks are kept: so many seconds. */
    private static final int MOST = 15;
    /** Seconds from one look to the next, at least. */
    private static final double APART_S = 0.95;
    /** Seconds: after a longer silence it begins anew. */
    private static final double LONGEST_GAP_S = 3;
    /** Nothing explains a second better than this, as a logarithm: half of what {@link Fit} gives where all fits. */
    private static final double MOST_PER_S = 8.5;

    private final Bins bins;
    private final Fit fit;
    private final OffsetDrift drift;
    private final Deque<Look> looks = new ArrayDeque<>();
    /** The same, the last first. */
    private Look[] back = {};
    /** How many bins of time each of them is before the last. */
    private int[] binsBack = {};
    /** One state, weighed as any other. */
    private final Belief scratch;

    private final Moments offsets = new Moments();
    private double explainsPerS;

    private record Look(double tS, Seen seen, double explained, double off) {}

    PathSoFar(Bins bins, Fit fit) {
        this.bins = bins;
        this.fit = fit;
        drift = new OffsetDrift(bins);
        scratch = new Belief(bins);
    }

    void clear() {
        looks.clear();
        back = new Look[0];
    }

    /**
     * Takes what is seen, in the order of time.
     *
     * @param explained logarithm of how well all that is believed has explained the readings so far
     * @param off the chance that it is off the plan, 0 to 1
     * @return whether it counts as another look
     */
    boolean add(double tS, Seen seen, double explained, double off) {
        double sinceS = looks.isEmpty() ? Double.POSITIVE_INFINITY : tS - looks.getFirst().tS;
        if (!seen.hasSpeeds() || sinceS < APART_S) {
            return false;
        }
        if (sinceS > LONGEST_GAP_S) {
            looks.clear();
        }
        looks.addFirst(new Look(tS, seen, explained, off));
        if (looks.size() > MOST) {
            looks.removeLast();
        }
        back = looks.toArray(new Look[0]);
        binsBack = looks.stream()
                .mapToInt(look -> (int) Math.round((tS - look.tS) / Bins.WIDTH_S))
                .toArray();
        return true;
    }

    int size() {
        return back.length;
    }

    Seen seen(int looksAgo) {
        return back[looksAgo].seen;
    }

    /** The bin in which a figure was that has come to a bin by now; it may lie before its first. */
    int binThen(int bin, int looksAgo) {
        return bin - binsBack[looksAgo];
    }

    /**
     * How likely it is that it was off the plan until a figure began which has come to a bin by now, against all that is believed; as a
     * logarithm, and as if the figure had surely begun if it was off the plan. Its offsets, as they would be believed by now, are in
     * {@link #offsets}. A figure that began before the first look is weighed from that on.
     *
     * @param direction as in {@link Lanes}
     * @param enough what it must come to
     * @return negative infinity where it cannot come to that
     */
    double likelierSinceOff(int bin, int direction, double enough) {
        int begun = 0;
        int first = bins.first[bins.figure[bin]];
        while (begun + 1 < back.length - 1 && binThen(bin, begun + 1) >= first) {
            begun++;
        }
        Look before = back[begun + 1];
        offsets.set(OffsetDrift.anywhere(1));
        double explains = 0;
        double believed = back[0].explained - before.explained - Math.log(before.off);
        for (int k = begun; k >= 0; k--) {
            explains += look(binThen(bin, k), direction, back[k].seen, back[k].tS - back[k + 1].tS);
            if (explains + MOST_PER_S * (back[0].tS - back[k].tS) - believed < enough) {
                return Double.NEGATIVE_INFINITY;
            }
        }
        explainsPerS = explains / (back[0].tS - before.tS);
        return explains - believed;
    }

    /** What is believed of the offsets by the last figure asked about. */
    Moments offsets() {
        return offsets;
    }

    /** How well that figure explains what was seen since, as the logarithm for a second. */
    double explainsPerS() {
        return explainsPerS;
    }

    private double look(int bin, int direction, Seen seen, double sinceS) {
        for (int step = 0; step < Math.round(sinceS / Motion.STEP_S); step++) {
            drift.step(offsets, bin);
        }
        scratch.chance[0] = 1;
        System.arraycopy(offsets.parts, 0, scratch.cells, 0, Moments.WIDTH);
        fit.look(bin, direction == 0 ? 1 : -1, seen, Evidence.power(sinceS));
        Way way = bins.way(bin);
        if (way != null) {
            fit.onAnyPath(way, bins.isLead(bin));
        }
        fit.weigh(scratch, 0, seen);
        double explains = scratch.chance[0];
        offsets.chance = 1;
        for (int k = 0; k < Moments.WIDTH; k++) {
            offsets.parts[k] = explains > 0 ? scratch.cells[k] / explains : 0;
        }
        return Math.log(explains);
    }
}
