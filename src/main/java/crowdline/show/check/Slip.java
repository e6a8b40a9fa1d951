package crowdline.show.check;

import crowdline.measure.Units;
import crowdline.show.bounds.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;

/** What was probably meant by a number that cannot be meant as it is: a sign, a decimal point, another unit. */
final class Slip {
    private static final List<Double> POINTS = List.of(-1.0, 10.0, 0.1, 100.0, 0.01, 1000.0, 0.001);
    /** By the last letters of a key: what one writes there by mistake, and how much of the key's unit it is. */
    private static final Map<String, Map<String, Double>> UNITS = Map.of(
            "ft", Map.of("metres", Units.ftFromM(1)),
            "m", Map.of("feet", Units.mFromFt(1)),
            "kt", Map.of("km/h", Units.ktFromMps(Units.mpsFromKmh(1))),
            "kg", Map.of("pounds", Units.kgFromLb(1)),
            "kw", Map.of("horsepower", 0.7457),
            "hpa", Map.of("inches of mercury", 33.8639),
            "minutes", Map.of("seconds", 1 / 60.0));

    private Slip() {}

    /** Such as {@code ; was 2,350 meant?}; empty if nothing is near at hand. */
    static String hint(Quantity quantity, double value, DoublePredicate fits) {
        Optional<Double> point = POINTS.stream()
                .map(factor -> value * factor)
                .filter(meant -> meant != value && fits.test(meant))
                .findFirst();
        if (point.isPresent()) {
            return "; was " + Quantity.written(point.orElseThrow()) + " meant?";
        }
        String key = quantity.key().toLowerCase(Locale.ROOT);
        return UNITS.entrySet().stream()
                .filter(unit -> key.endsWith(unit.getKey()))
                .flatMap(unit -> unit.getValue().entrySet().stream())
                .filter(other -> fits.test(value * other.getValue()))
                .map(other -> "; are these " + other.getKey() + "?")
                .findFirst()
                .orElse("");
    }
}
