package crowdline.follow;

import java.util.Arrays;

/**
 * A chance, and with it the mean and the spread of what is believed: each offset times the chance, and its square times the
 * chance. Kept like this, two beliefs are merged by adding them. A {@link Belief} keeps them in the same order.
 */
final class Moments {
    /** Metres along the A-axis, in the direction planned, from where the aircraft is predicted; its square follows. */
    static final int ALONG = 0;
    /** Metres above where it is predicted. */
    static final int HEIGHT = 2;
    /** Share of the predicted speed by which it is faster. */
    static final int FASTER = 4;
    /** How many numbers there are. */
    static final int WIDTH = 6;

    /** What pilots differ by in speed, as a share, and how far off the display line they fly, metres. Tuned. */
    private static final double FASTER_SHARE = 0.12;

    static final double FASTER2 = FASTER_SHARE * FASTER_SHARE;

    double chance;
    final double[] parts = new double[WIDTH];

    /** A chance of which nothing is known but how far it may be off. */
    static Moments of(double chance, double alongVarianceM2, double heightVarianceM2) {
        Moments m = new Moments();
        m.chance = chance;
        m.parts[ALONG + 1] = chance * alongVarianceM2;
        m.parts[HEIGHT + 1] = chance * heightVarianceM2;
        m.parts[FASTER + 1] = chance * FASTER2;
        return m;
    }

    /** Mean of an offset. */
    double mean(int offset) {
        return parts[offset] / chance;
    }

    double variance(int offset) {
        double mean = mean(offset);
        return Math.max(parts[offset + 1] / chance - mean * mean, 0);
    }

    void clear() {
        chance = 0;
        Arrays.fill(parts, 0);
    }

    void set(Belief belief, int state) {
        chance = belief.chance[state];
        System.arraycopy(belief.cells, state * WIDTH, parts, 0, WIDTH);
    }

    void set(Moments m) {
        chance = m.chance;
        System.arraycopy(m.parts, 0, parts, 0, WIDTH);
    }

    void add(Moments m, double share) {
        chance += m.chance * share;
        m.addTo(parts, 0, share);
    }

    /** Adds a share of the parts to numbers kept in the same order; written out, because most of the filter's time is here. */
    void addTo(double[] cells, int from, double share) {
        cells[from] += parts[0] * share;
        cells[from + 1] += parts[1] * share;
        cells[from + 2] += parts[2] * share;
        cells[from + 3] += parts[3] * share;
        cells[from + 4] += parts[4] * share;
        cells[from + 5] += parts[5] * share;
    }

    /** An offset becomes less certain. */
    void widen(int offset, double variance) {
        parts[offset + 1] += chance * variance;
    }

    /** Of what is believed of the speed this share is kept; the rest is as if nothing were known. */
    void fade(double keep) {
        parts[FASTER] *= keep;
        parts[FASTER + 1] = keep * keep * parts[FASTER + 1] + (1 - keep * keep) * chance * FASTER2;
    }

    /** Another chance further along the axis and higher by so much. */
    void moved(Moments from, double alongM, double heightM) {
        set(from);
        move(ALONG, alongM);
        move(HEIGHT, heightM);
    }

    /**
     * Another chance as it is seen in the other direction along the axis.
     *
     * @param alongM where along the axis it is predicted to be
     */
    void turned(Moments from, double alongM) {
        set(from);
        parts[ALONG] = -2 * alongM * chance - from.parts[ALONG];
        parts[ALONG + 1] = 4 * alongM * (alongM * chance + from.parts[ALONG]) + from.parts[ALONG + 1];
    }

    private void move(int offset, double by) {
        parts[offset + 1] += by * (2 * parts[offset] + chance * by);
        parts[offset] += chance * by;
    }
}
