package crowdline.patter;

/** The planner's unit of time, a tenth of a second, and how seconds become whole ones. */
final class Tick {
    static final int PER_S = 10;

    /** Stands for "never". */
    static final int NEVER = Integer.MAX_VALUE;

    /** Guards a whole number of ticks against the last bit of a double. */
    private static final double ROUNDING = 1e-6;

    private Tick() {}

    /** A moment, to the nearest tick. */
    static int at(double seconds) {
        return Math.toIntExact(Math.round(seconds * PER_S));
    }

    /** A length or the moment now, up to the next tick. */
    static int up(double seconds) {
        return Math.toIntExact((long) Math.ceil(seconds * PER_S - ROUNDING));
    }

    static double seconds(long ticks) {
        return ticks / (double) PER_S;
    }
}
