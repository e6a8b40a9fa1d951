package crowdline.telemetry;

/** Which of the two heights of an IGC file to read. */
public enum IgcHeight {
    /** By satellite. Without a word in the file, above the ellipsoid. */
    GNSS,
    /** By pressure, against 1,013.25 hPa: smoother, and off by the day's pressure. */
    PRESSURE
}
