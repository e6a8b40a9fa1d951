package crowdline.measure;

import java.util.List;

/** What heights are read in. Places along the display line and beyond it are always in metres. */
public enum LengthUnit implements ReadUnit {
    FEET(1, "ft", "foot", "feet", "'"),
    METRES(Units.mFromFt(1), "m", "metre", "metres");

    private final double perFt;

    @SuppressWarnings("ImmutableEnumChecker") // filled by List.of, so it never changes
    private final List<String> names;

    LengthUnit(double perFt, String... names) {
        this.perFt = perFt;
        this.names = List.of(names);
    }

    /** Such as "metres". */
    public String words() {
        return this == FEET ? "feet" : "metres";
    }

    /** As it stands behind a number, such as "ft". */
    public String sign() {
        return names.get(0);
    }

    @Override
    public List<String> names() {
        return names;
    }

    double perFt() {
        return perFt;
    }

    @Override
    public String toString() {
        return words();
    }
}
