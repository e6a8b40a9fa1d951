package crowdline.measure;

import crowdline.measure.Measures.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as somebody types it into a field, with its unit or without, in the unit that the field keeps it in. */
public final class TypedNumber {
    private static final Pattern TYPED = Pattern.compile("[-+]?\\d{1,7}(?:\\.\\d{1,6})?\\s*(\\S.*)?");

    /** Pounds and feet are exact (international yard and pound agreement of 1959). */
    private static final double KG_PER_LB = Units.kgFromLb(1);

    private static final double KN_PER_LBF = KG_PER_LB * Units.G_MPS2 / 1000;
    /** 75 kgf·m/s. */
    private static final double KW_PER_PS = 75 * Units.G_MPS2 / 1000;
    /** 25.4 mm of mercury of 13.5951 g/cm³ under standard gravity. */
    private static final double HPA_PER_INHG = 25.4 * 13.5951 * Units.G_MPS2 / 100;

    private static final List<Unit> UNITS = List.of(
            new Unit("kg", 1, 0, "kg", "kgs", "kilo", "kilos", "kilograms"),
            new Unit("kg", KG_PER_LB, 0, "lb", "lbs", "pound", "pounds"),
            new Unit("kg", 1000, 0, "t", "tonne", "tonnes"),
            new Unit("kW", 1, 0, "kw", "kilowatts"),
            new Unit("kW", Units.kwFromHp(1), 0, "hp", "bhp", "shp", "horsepower"),
            new Unit("kW", KW_PER_PS, 0, "ps", "cv"),
            new Unit("kN", 1, 0, "kn"),
            new Unit("kN", KN_PER_LBF, 0, "lbf", "lb", "lbs"),
            new Unit("m²", 1, 0, "m²", "m2", "sq m", "square metres"),
            new Unit("m²", Units.mFromFt(1) * Units.mFromFt(1), 0, "ft²", "ft2", "sq ft", "square feet"),
            new Unit("°C", 1, 0, "°c", "c", "° c", "celsius"),
            new Unit("°C", 1 / 1.8, -32, "°f", "f", "° f", "fahrenheit"),
            new Unit("hPa", 1, 0, "hpa", "mb", "mbar", "millibars"),
            new Unit("hPa", HPA_PER_INHG, 0, "inhg", "in", "inches"),
            new Unit("°", 1, 0, "°", "deg", "degrees"),
            new Unit("°/s", 1, 0, "°/s", "deg/s", "degrees a second"),
            new Unit("rpm", 1, 0, "rpm"),
            new Unit("g", 1, 0, "g"),
            new Unit("s", 1, 0, "s", "sec", "secs", "second", "seconds"),
            new Unit("s", 60, 0, "min", "mins", "minute", "minutes"));

    private TypedNumber() {}

    /**
     * A unit that may be typed.
     *
     * @param kept the unit of the field
     * @param per of those in one of these
     * @param before what is added before
     */
    private record Unit(String kept, double per, double before, List<String> names) {
        Unit(String kept, double per, double before, String... names) {
            this(kept, per, before, List.of(names));
        }
    }

    /**
     * A number as it was typed.
     *
     * @param label of the field, such as "Elevation, ft"; its unit says which may be typed
     * @return nothing if it is no number, or its unit is none of those
     */
    public static OptionalDouble read(String typed, String label) {
        Dimension dimension = Dimension.of(label);
        String kept = label.substring(label.lastIndexOf(", ") + 1).strip();
        Matcher found = TYPED.matcher(Measures.plain(typed));
        if (dimension != Dimension.OTHER
                || !found.matches()
                || found.group(1) == null
                || UNITS.stream().noneMatch(u -> u.kept.equals(kept))) {
            return Measures.read(typed, dimension);
        }
        String name = found.group(1).strip().toLowerCase(Locale.ROOT);
        Optional<Unit> unit = UNITS.stream()
                .filter(u -> u.kept.equals(kept) && u.names.contains(name))
                .findFirst();
        double number = Measures.read(found.group().substring(0, found.start(1)), dimension)
                .orElseThrow();
        return unit.map(u ->
                        OptionalDouble.of(u.per == 1 ? number : Math.rint((number + u.before) * u.per * 100) / 100))
                .orElse(OptionalDouble.empty());
    }
}
