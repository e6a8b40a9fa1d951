package crowdline.follow;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * What a change did to a trial. The same flights are compared with themselves, so that what differs from flight to flight
 * drops out; what is left of it is the standard error behind each difference.
 */
final class TrialDifference {
    private record Pair(TrialFlight before, TrialFlight now) {}

    private final Map<String, List<Pair>> pairs;

    TrialDifference(List<TrialFlight> before, List<TrialFlight> now) {
        pairs = now.stream()
                .flatMap(n -> before.stream().filter(n::isSameFlight).limit(1).map(b -> new Pair(b, n)))
                .collect(Collectors.groupingBy(p -> p.now().scenario(), LinkedHashMap::new, Collectors.toList()));
    }

    String table() {
        StringBuilder table = new StringBuilder(String.format(
                Locale.ROOT,
                "%-36s %7s %16s %16s %16s %16s%n",
                "difference and its standard error",
                "flights",
                "right %",
                "sure and wrong %",
                "live s",
                "looked back s"));
        pairs.forEach((scenario, flights) -> table.append(String.format(
                Locale.ROOT,
                "%-36s %7d %16s %16s %16s %16s%n",
                scenario,
                flights.size(),
                cell(flights, TrialFlight::right),
                cell(flights, TrialFlight::sureAndWrong),
                cell(flights, TrialFlight::boundaryS),
                cell(flights, TrialFlight::lookedBackS))));
        return table.toString();
    }

    private static String cell(List<Pair> flights, ToDoubleFunction<TrialFlight> value) {
        double[] change = flights.stream()
                .mapToDouble(p -> value.applyAsDouble(p.now()) - value.applyAsDouble(p.before()))
                .toArray();
        return String.format(Locale.ROOT, "%+.2f ± %.2f", mean(change), standardError(change));
    }

    static double mean(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        return sum / values.length;
    }

    /** Of the mean; 0 for a single value, of which none can be told. */
    static double standardError(double[] values) {
        double mean = mean(values);
        double sum = 0;
        for (double v : values) {
            sum += (v - mean) * (v - mean);
        }
        return values.length < 2 ? 0 : Math.sqrt(sum / (values.length - 1) / values.length);
    }
}
