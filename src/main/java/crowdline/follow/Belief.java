package crowdline.follow;

import java.util.Arrays;

/**
 * How likely every hidden state is. A state is a bin of phase in a lane; a lane is a direction along the A-axis and a
 * tempo. With each state goes what is believed of the height above the prediction there, as moments weighted with the
 * chance, so that moving chances about moves them too.
 */
final class Belief {
    final Bins bins;
    final int lanes;
    /** Chance of each state, by lane and bin. */
    final double[] chance;
    /** Chance times the mean of the height offset, metres. */
    final double[] mean;
    /** Chance times the mean square of the height offset, square metres. */
    final double[] square;
    /** Of each lane and figure, the first and last bin in use; first above last where none is. */
    final int[] low;

    final int[] high;
    double before;
    double off;
    double after;

    Belief(Bins bins, int lanes) {
        this.bins = bins;
        this.lanes = lanes;
        chance = new double[lanes * bins.size];
        mean = new double[lanes * bins.size];
        square = new double[lanes * bins.size];
        low = new int[lanes * bins.figures];
        high = new int[lanes * bins.figures];
        Arrays.fill(low, Integer.MAX_VALUE);
        Arrays.fill(high, -1);
    }

    void clear() {
        for (int lane = 0; lane < lanes; lane++) {
            for (int f = 0; f < bins.figures; f++) {
                clear(lane, f);
            }
        }
        before = 0;
        off = 0;
        after = 0;
    }

    void clear(int lane, int f) {
        int block = lane * bins.figures + f;
        if (low[block] <= high[block]) {
            int from = lane * bins.size + low[block];
            int to = lane * bins.size + high[block] + 1;
            Arrays.fill(chance, from, to, 0);
            Arrays.fill(mean, from, to, 0);
            Arrays.fill(square, from, to, 0);
            low[block] = Integer.MAX_VALUE;
            high[block] = -1;
        }
    }

    void add(int lane, int bin, double c, double m, double q) {
        int i = lane * bins.size + bin;
        chance[i] += c;
        mean[i] += m;
        square[i] += q;
        int block = lane * bins.figures + bins.figure[bin];
        low[block] = Math.min(low[block], bin);
        high[block] = Math.max(high[block], bin);
    }

    /** Adds a state whose height offset has this mean and variance. */
    void put(int lane, int bin, double c, double offsetM, double varianceM2) {
        add(lane, bin, c, c * offsetM, c * (varianceM2 + offsetM * offsetM));
    }

    /** Chance of a figure in one lane. */
    double in(int lane, int f) {
        int block = lane * bins.figures + f;
        double sum = 0;
        int base = lane * bins.size;
        for (int i = low[block]; i <= high[block]; i++) {
            sum += chance[base + i];
        }
        return sum;
    }

    double in(int f) {
        double sum = 0;
        for (int lane = 0; lane < lanes; lane++) {
            sum += in(lane, f);
        }
        return sum;
    }

    double total() {
        double sum = before + off + after;
        for (int lane = 0; lane < lanes; lane++) {
            for (int f = 0; f < bins.figures; f++) {
                sum += in(lane, f);
            }
        }
        return sum;
    }

    /** Makes the chances add up to 1 and forgets states below a chance; false if nothing was left to scale. */
    boolean settle(double least) {
        double total = total();
        if (!(total > 0) || !Double.isFinite(total)) {
            return false;
        }
        double scale = 1 / total;
        before *= scale;
        off *= scale;
        after *= scale;
        for (int lane = 0; lane < lanes; lane++) {
            for (int f = 0; f < bins.figures; f++) {
                settle(lane, f, scale, least);
            }
        }
        return true;
    }

    private void settle(int lane, int f, double scale, double least) {
        int block = lane * bins.figures + f;
        int base = lane * bins.size;
        int newLow = Integer.MAX_VALUE;
        int newHigh = -1;
        for (int i = low[block]; i <= high[block]; i++) {
            double c = chance[base + i] * scale;
            if (c < least) {
                chance[base + i] = 0;
                mean[base + i] = 0;
                square[base + i] = 0;
            } else {
                chance[base + i] = c;
                mean[base + i] *= scale;
                square[base + i] *= scale;
                newLow = Math.min(newLow, i);
                newHigh = i;
            }
        }
        low[block] = newLow;
        high[block] = newHigh;
    }
}
