package crowdline.follow;

import java.util.Arrays;

/**
 * How likely every hidden state is. A state is a bin of phase in a lane; a lane is a direction along the A-axis and a
 * tempo. With each state goes what is believed of how far along the axis, away from the crowd and up the aircraft is from
 * where it is predicted, and how much faster it is: as {@link Moments}, so that moving chances about moves them too.
 */
final class Belief {
    /** Chances that add up to 1 but for this are left as they are. */
    private static final double NEAR_ONE = 1e-3;

    final Bins bins;
    /** Chance of each state, by lane and bin. */
    final double[] chance;
    /** The moments of each state, one after another; none of what is only timed. */
    final double[] cells;
    /** Of each lane and figure, the first and last bin in use; first above last where none is. */
    final int[] low;

    final int[] high;
    /** Of each lane and figure, its chance when last settled. */
    private final double[] sum;
    /** Of each lane and figure, the chance of its second half when last settled. */
    private final double[] late;
    /** Of each lane and figure, the chance of its likeliest state before its last part, and in that. */
    private final double[] most;

    private final double[] mostAtEnd;

    double before;
    /** Off the plan, doing anything. */
    double off;
    /** Off the plan in gentle flight, as on a way back to the display line. */
    double offGently;

    double after;
    /** What the chances came to before they were last settled. */
    double total;

    Belief(Bins bins) {
        this.bins = bins;
        chance = new double[Lanes.COUNT * bins.size];
        cells = new double[Lanes.COUNT * bins.size * Moments.WIDTH];
        low = new int[Lanes.COUNT * bins.figures];
        high = new int[Lanes.COUNT * bins.figures];
        sum = new double[Lanes.COUNT * bins.figures];
        late = new double[Lanes.COUNT * bins.figures];
        most = new double[Lanes.COUNT * bins.figures];
        mostAtEnd = new double[Lanes.COUNT * bins.figures];
        Arrays.fill(low, Integer.MAX_VALUE);
        Arrays.fill(high, -1);
    }

    void clear() {
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            for (int f = 0; f < bins.figures; f++) {
                clear(lane, f);
            }
        }
        before = 0;
        off = 0;
        offGently = 0;
        after = 0;
    }

    void clear(int lane, int f) {
        int block = lane * bins.figures + f;
        if (low[block] <= high[block]) {
            int from = state(lane, low[block]);
            int to = state(lane, high[block]) + 1;
            Arrays.fill(chance, from, to, 0);
            Arrays.fill(cells, from * Moments.WIDTH, to * Moments.WIDTH, 0);
            low[block] = Integer.MAX_VALUE;
            high[block] = -1;
        }
        sum[block] = 0;
        late[block] = 0;
    }

    /** Where a state is among the chances. */
    int state(int lane, int bin) {
        return lane * bins.size + bin;
    }

    /** A moment of a state, see {@link Moments}. */
    double moment(int state, int which) {
        return cells[state * Moments.WIDTH + which];
    }

    /** Adds a share of moments to a state. */
    void add(int lane, int bin, Moments m, double share) {
        int state = state(lane, bin);
        chance[state] += m.chance * share;
        if (!bins.timed[bin]) {
            m.addTo(cells, state * Moments.WIDTH, share);
        }
        int block = lane * bins.figures + bins.figure[bin];
        if (bin < low[block]) {
            low[block] = bin;
        }
        if (bin > high[block]) {
            high[block] = bin;
        }
    }

    /** Adds a share of moments where nothing is known of direction and tempo. */
    void addInAnyLane(int bin, Moments m, double share) {
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            add(lane, bin, m, share * Lanes.share(lane));
        }
    }

    /** Multiplies the chance of a state. */
    void scale(int state, boolean timed, double factor) {
        chance[state] *= factor;
        if (!timed) {
            int cell = state * Moments.WIDTH;
            for (int k = 0; k < Moments.WIDTH; k++) {
                cells[cell + k] *= factor;
            }
        }
    }

    /** Chance of a figure in one lane, as of the last {@link #settle}. */
    double in(int lane, int f) {
        return sum[lane * bins.figures + f];
    }

    double in(int f) {
        double all = 0;
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            all += in(lane, f);
        }
        return all;
    }

    /** Mean of an offset over all states of a figure. */
    double mean(int f, int which) {
        double sum = 0;
        double all = 0;
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            int block = lane * bins.figures + f;
            for (int i = low[block]; i <= high[block]; i++) {
                int state = state(lane, i);
                all += chance[state];
                sum += moment(state, which);
            }
        }
        return all > 0 ? sum / all : 0;
    }

    /** Chance of the second half of a figure, as of the last {@link #settle}. */
    double late(int f) {
        double all = 0;
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            all += late[lane * bins.figures + f];
        }
        return all;
    }

    /** Chance of being off the plan. */
    double unplanned() {
        return off + offGently;
    }

    /**
     * Makes the chances add up to 1 and forgets what is too unlikely to matter: figures in a lane as a whole, so that one
     * whose phase is not known yet is not forgotten piece by piece, and the edges of each.
     *
     * @param leastFigure a figure in a lane less likely than this is forgotten
     * @param leastState a state less likely than this is forgotten
     * @param leastShare and one less likely than this share of the likeliest of its figure and lane, before the last part or
     *     in it
     * @return false if nothing was left to scale
     */
    boolean settle(double leastFigure, double leastState, double leastShare) {
        double total = before + unplanned() + after;
        for (int block = 0; block < low.length; block++) {
            if (low[block] <= high[block]) {
                sumUp(block);
                total += sum[block];
            }
        }
        this.total = total;
        if (!(total > 0) || !Double.isFinite(total)) {
            return false;
        }
        double scale = Math.abs(total - 1) < NEAR_ONE ? 1 : 1 / total;
        before *= scale;
        off *= scale;
        offGently *= scale;
        after *= scale;
        for (int block = 0; block < low.length; block++) {
            if (low[block] > high[block]) {
                continue;
            }
            sum[block] *= scale;
            late[block] *= scale;
            if (sum[block] < leastFigure) {
                clear(block / bins.figures, block % bins.figures);
            } else {
                trim(block, scale, leastState / scale, leastShare);
            }
        }
        return true;
    }

    private void sumUp(int block) {
        int f = block % bins.figures;
        int base = block / bins.figures * bins.size;
        int from = low[block];
        int to = high[block] + 1;
        int half = Math.max(from, Math.min(bins.half(f), to));
        int end = Math.max(from, Math.min(bins.leadFrom[f], to));
        double inFirst = 0;
        double inSecond = 0;
        double mostBefore = 0;
        double mostAfter = 0;
        for (int i = from; i < to; i++) {
            double c = chance[base + i];
            if (c == 0) {
                continue;
            }
            if (i < half) {
                inFirst += c;
            } else {
                inSecond += c;
            }
            if (i < end) {
                mostBefore = Math.max(mostBefore, c);
            } else {
                mostAfter = Math.max(mostAfter, c);
            }
        }
        sum[block] = inFirst + inSecond;
        late[block] = inSecond;
        most[block] = mostBefore;
        mostAtEnd[block] = mostAfter;
    }

    /**
     * Scales the states of a figure in a lane and forgets those less likely before that. Its last part is by itself: what
     * has just come there from where an aircraft waits is little beside all that waits.
     */
    private void trim(int block, double scale, double least, double leastShare) {
        int base = block / bins.figures * bins.size;
        int end = bins.leadFrom[block % bins.figures];
        boolean timed = bins.timed[bins.first[block % bins.figures]];
        double leastBefore = Math.max(least, leastShare * most[block]);
        double leastAtEnd = Math.max(least, leastShare * mostAtEnd[block]);
        int newLow = high[block];
        int newHigh = low[block];
        for (int i = low[block]; i <= high[block]; i++) {
            double c = chance[base + i];
            if (c == 0) {
                continue;
            }
            if (c < (i < end ? leastBefore : leastAtEnd)) {
                scale(base + i, timed, 0);
                continue;
            }
            if (scale != 1) {
                scale(base + i, timed, scale);
            }
            newLow = Math.min(newLow, i);
            newHigh = i;
        }
        low[block] = newLow;
        high[block] = newHigh;
    }
}
