package crowdline.trace;

import crowdline.trace.FlightOf.Flown;
import crowdline.trace.Found.What;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Whether what is said to be so sure is right so often; what was found where no figure was flown is wrong. */
final class SureScore {
    /** From so sure on, each to the next. */
    private static final double[] FROM = {0, 0.3, 0.5, 0.7, 0.8, 0.9, 1.01};

    private static final Set<String> NONE = Set.of("way", "take-off", "run-in", "landing");

    private final int[] found = new int[FROM.length - 1];
    private final int[] right = new int[FROM.length - 1];
    private final double[] said = new double[FROM.length - 1];

    void add(FlightOf flight, List<Found> all) {
        for (Found one : all) {
            if (one.what() == What.FIGURE) {
                double sure = one.guesses().get(0).sure();
                int bin = 0;
                while (sure >= FROM[bin + 1]) {
                    bin++;
                }
                found[bin]++;
                said[bin] += sure;
                right[bin] += isRight(flight, one) ? 1 : 0;
            }
        }
    }

    private static boolean isRight(FlightOf flight, Found one) {
        return flight.flown().stream()
                .filter(f -> !NONE.contains(f.figure()))
                .max(Comparator.comparingDouble(f -> overlapS(f, one)))
                .filter(f -> overlapS(f, one) > 0.3 * Math.min(one.seconds(), f.endS() - f.startS()))
                .filter(f -> FindScore.rank(f, one) == 0)
                .isPresent();
    }

    private static double overlapS(Flown f, Found one) {
        return Math.min(f.endS(), one.endS()) - Math.max(f.startS(), one.startS());
    }

    /** How many were found with a first guess of about each chance, and how many of them were right. */
    String table() {
        StringBuilder text = new StringBuilder("sure of the first guess, and right:");
        for (int bin = 0; bin < found.length; bin++) {
            if (found[bin] > 0) {
                text.append(String.format(
                        Locale.ROOT,
                        " %.2f is %.2f of %d;",
                        said[bin] / found[bin],
                        (double) right[bin] / found[bin],
                        found[bin]));
            }
        }
        return text.append('\n').toString();
    }
}
