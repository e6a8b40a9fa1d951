package crowdline.follow;

/** The filter runs in lanes: the act as planned and mirrored along the A-axis, each at three tempos. */
final class Lanes {
    /**
     * Factors on how fast phase runs. Tuned: 0.93 and 1.08 work too, 0.75 and 1.33 cost 4 %. One tempo alone loses 1.3
     * % of a slow flight.
     */
    private static final double[] TEMPO = {0.86, 1, 1.16};
    /** Share of figures flown at each tempo. */
    private static final double[] SHARE = {0.2, 0.6, 0.2};

    static final int TEMPOS = TEMPO.length;
    static final int COUNT = 2 * TEMPOS;

    private Lanes() {}

    static int of(int direction, int tempo) {
        return direction * TEMPOS + tempo;
    }

    /** The same tempo in the other direction. */
    static int turned(int lane) {
        return (lane + TEMPOS) % COUNT;
    }

    static int direction(int lane) {
        return lane / TEMPOS;
    }

    static double tempo(int lane) {
        return TEMPO[lane % TEMPOS];
    }

    /** How likely a lane is when nothing is known of direction and tempo. */
    static double share(int lane) {
        return SHARE[lane % TEMPOS] / 2;
    }
}
