package crowdline.telemetry;

/** How a position came about, as the receiver says it (NMEA 0183, sentence GGA, quality). */
public enum FixQuality {
    /** Satellites alone. */
    SATELLITE,
    /** Satellites with corrections. */
    DIFFERENTIAL,
    /** The precise service. */
    PRECISE,
    /** Carrier phase, whole numbers of waves known. */
    RTK_FIXED,
    /** Carrier phase, whole numbers of waves not known. */
    RTK_FLOAT,
    /** Carried on from earlier positions: nobody measured it. */
    ESTIMATED,
    /** Typed in: nobody measured it. */
    MANUAL,
    /** From a simulator. */
    SIMULATED,
    /** The source does not say. */
    UNSTATED;

    /** Whether something stands behind the position other than a guess of the receiver. */
    public boolean isMeasured() {
        return this != ESTIMATED && this != MANUAL;
    }
}
