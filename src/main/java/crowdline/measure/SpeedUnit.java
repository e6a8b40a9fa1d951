package crowdline.measure;

import java.util.List;

/** What speeds are read in. */
public enum SpeedUnit implements ReadUnit {
    KNOTS("knots", 1, "kt", "kts", "kn", "knot", "knots"),
    KMH(
            "kilometres an hour",
            Units.kmhFromMps(Units.mpsFromKt(1)),
            "km/h",
            "kmh",
            "kph",
            "kilometre an hour",
            "kilometres an hour"),
    MPH("miles an hour", Units.mphFromMps(Units.mpsFromKt(1)), "mph", "mile an hour", "miles an hour");

    private final String words;
    private final double perKt;

    @SuppressWarnings("ImmutableEnumChecker") // filled by List.of, so it never changes
    private final List<String> names;

    SpeedUnit(String words, double perKt, String... names) {
        this.words = words;
        this.perKt = perKt;
        this.names = List.of(names);
    }

    /** Such as "kilometres an hour". */
    public String words() {
        return words;
    }

    /** As it stands behind a number, such as "km/h". */
    public String sign() {
        return names.get(0);
    }

    @Override
    public List<String> names() {
        return names;
    }

    double perKt() {
        return perKt;
    }

    @Override
    public String toString() {
        return words();
    }
}
