package crowdline.telemetry;

/** What a flight log is written in. */
public enum LogFormat {
    /** Sentences of a receiver, NMEA 0183, possibly with other bytes between them. */
    NMEA("NMEA 0183"),
    /** The flight recorders' format of the IGC. */
    IGC("IGC"),
    /** GPS Exchange Format 1.0 or 1.1. */
    GPX("GPX");

    private final String words;

    LogFormat(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
