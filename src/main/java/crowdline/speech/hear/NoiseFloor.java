package crowdline.speech.hear;

/**
 * The noise in one band: how loud it is and how much it wavers.
 *
 * @param meanDb its level, decibels
 * @param waverDb mean distance of single levels from it, decibels
 * @param levels how many were learned from
 */
record NoiseFloor(double meanDb, double waverDb, int levels) {
    static final NoiseFloor UNKNOWN = new NoiseFloor(0, 0, 0);

    /** Quieter microphones do not exist; less is a gate that shuts between words. Tuned. */
    private static final double QUIETEST_DB = -70;
    /** The floor follows within a second. Tuned: quick enough for a passing cart, slow enough for a breath. */
    private static final double SLOWEST_GAIN = SoundLevel.FRAME_S / 1.0;

    /** Mean distance to standard deviation, for the normal distribution: square root of pi / 2. */
    private static final double TO_SIGMA = Math.sqrt(Math.PI / 2);

    /** So many standard deviations are beyond chance for a run of levels, within bounds in decibels. Tuned. */
    private static final double CLEARLY = 5;

    private static final double CLEARLY_LEAST_DB = 6;
    private static final double CLEARLY_MOST_DB = 12;
    private static final double BARELY = 3;
    private static final double BARELY_LEAST_DB = 2.5;
    private static final double BARELY_MOST_DB = 6;

    NoiseFloor learn(double db) {
        double level = Math.max(db, QUIETEST_DB);
        if (levels == 0) {
            return new NoiseFloor(level, 0, 1);
        }
        double gain = Math.max(SLOWEST_GAIN, 1.0 / (levels + 1));
        double mean = meanDb + gain * (level - meanDb);
        return new NoiseFloor(mean, waverDb + gain * (Math.abs(level - mean) - waverDb), levels + 1);
    }

    NoiseFloor at(double db) {
        return new NoiseFloor(Math.max(db, QUIETEST_DB), waverDb, levels);
    }

    /** This one turning evenly into another. */
    NoiseFloor towards(NoiseFloor other, double share) {
        return new NoiseFloor(
                meanDb + share * (other.meanDb - meanDb),
                Math.max(waverDb, other.waverDb),
                Math.max(levels, other.levels));
    }

    double overDb(double db) {
        return db - meanDb;
    }

    boolean isClearlyUnder(double db) {
        return overDb(db) > Math.min(CLEARLY_MOST_DB, Math.max(CLEARLY_LEAST_DB, CLEARLY * TO_SIGMA * waverDb));
    }

    boolean isBarelyUnder(double db) {
        return overDb(db) > Math.min(BARELY_MOST_DB, Math.max(BARELY_LEAST_DB, BARELY * TO_SIGMA * waverDb));
    }
}
