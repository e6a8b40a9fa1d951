package crowdline.sight;

/**
 * Whether looking at the aircraft means looking into the sun.
 *
 * @param degrees between the aircraft and the sun
 * @param intoSun true if the sun is up and nearer than {@link #NEAR_DEG}
 */
public record Glare(double degrees, boolean intoSun) {
    /** Nearer than this the sun is in the way; judgement, no source. */
    public static final double NEAR_DEG = 15;

    /** What to tell a crowd that is looking into the sun. */
    public static final String WORDS = "into the sun: shade your eyes, never look at the sun itself";

    static Glare of(Sun sun, Sighting look, double axisBearingDeg) {
        double degrees = sun.degreesFrom(look, axisBearingDeg);
        return new Glare(degrees, sun.isUp() && degrees < NEAR_DEG);
    }
}
