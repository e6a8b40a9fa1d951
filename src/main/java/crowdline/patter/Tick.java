package crowdline.patter;

/** The planner's unit of time, a tenth of a second, and how seconds become whole ones. */
final class Tick {
    static final int PER_S = 10;

    /** Stands for "never". */
    static final int NEVER = Integer.MAX_VALUE;

    /** Beyond every act, and so far from the ends of an int that sums of moments stay within it. */
    private static final double MOST_S = 1e7;

    private static final String MOST = "10,000,000";

    /** Guards a whole number of ticks against the last bit of a double. */
    private static final double ROUNDING = 1e-6;

    private Tick() {}

    /**
     * A moment, to the nearest tick.
     *
     * @throws IllegalArgumentException if it is no number, or further than {@link #MOST_S} from the beginning of its act
     */
    static int at(double seconds) {
        return (int) Math.round(within(seconds) * PER_S);
    }

    /** A length or the moment now, up to the next tick; see {@link #at} for errors. */
    static int up(double seconds) {
        return (int) Math.ceil(within(seconds) * PER_S - ROUNDING);
    }

    private static double within(double seconds) {
        if (!(Math.abs(seconds) <= MOST_S)) {
            throw new IllegalArgumentException("a time to plan by is " + seconds + " s; it must be a number from -"
                    + MOST + " to " + MOST + " s, so check the times of the act and its remarks");
        }
        return seconds;
    }

    static double seconds(long ticks) {
        return ticks / (double) PER_S;
    }
}
