package crowdline.sight;

/** How late the crowd hears what it sees. */
public final class Sound {
    private static final double AT_FREEZING_MPS = 331;
    private static final double FREEZING_K = 273;

    private Sound() {}

    /**
     * Speed of sound in air, m/s: 331 √(1 + Tc/273) (OpenStax, University Physics Volume 1, section 17.2).
     *
     * @param temperatureC air temperature, °C, above −273
     */
    public static double speedMps(double temperatureC) {
        return AT_FREEZING_MPS * Math.sqrt(1 + temperatureC / FREEZING_K);
    }

    /** Seconds that sound takes for a distance along the line of sight, in metres, in still air. */
    public static double delayS(double slantM, double temperatureC) {
        return slantM / speedMps(temperatureC);
    }

    /** Such as "you hear it about one second late"; below three quarters of a second "you hear it at once". */
    public static String words(double delayS) {
        return delayS < 0.75
                ? "you hear it at once"
                : "you hear it about " + Said.seconds(delayS).words() + " late";
    }
}
