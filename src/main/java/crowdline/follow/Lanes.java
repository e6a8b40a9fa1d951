package crowdline.follow;

/** The lanes of the filter: two directions along the A-axis times a few tempos. */
final class Lanes {
    /** How fast phase runs against the plan: tuned on flights varied by 5 to 15 %. */
    private static final double[] TEMPO = {0.86, 1, 1.16};

    private static final double[] SHARE = {0.2, 0.6, 0.2};
    /** Chance that a pilot keeps the tempo from one figure to the next. */
    private static final double KEPT = 0.5;

    static final int TEMPOS = TEMPO.length;
    static final int COUNT = 2 * TEMPOS;

    private Lanes() {}

    static int of(int direction, int tempo) {
        return direction * TEMPOS + tempo;
    }

    static int direction(int lane) {
        return lane / TEMPOS;
    }

    static double tempo(int lane) {
        return TEMPO[lane % TEMPOS];
    }

    /** How likely a tempo is when nothing is known. */
    static double share(int tempo) {
        return SHARE[tempo];
    }

    /** Chance of one tempo after another, from figure to figure. */
    static double next(int from, int to) {
        return (1 - KEPT) * SHARE[to] + (from == to ? KEPT : 0);
    }
}
