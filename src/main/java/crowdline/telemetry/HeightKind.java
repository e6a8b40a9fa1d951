package crowdline.telemetry;

/** What a height is measured from. */
public enum HeightKind {
    /** Mean sea level, by the receiver's own table. */
    SEA_LEVEL("above mean sea level"),
    /** The WGS 84 ellipsoid; from about 100 m below to 85 m above sea level, by place. */
    ELLIPSOID("above the WGS 84 ellipsoid"),
    /** The level where the standard atmosphere has 1,013.25 hPa. */
    PRESSURE("of pressure, against 1,013.25 hPa"),
    /** The file does not say; mostly sea level. */
    UNSTATED("above a level the file does not name");

    private final String words;

    HeightKind(String words) {
        this.words = words;
    }

    /** To follow the word "heights". */
    public String words() {
        return words;
    }
}
