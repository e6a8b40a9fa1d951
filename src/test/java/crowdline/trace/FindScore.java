package crowdline.trace;

import crowdline.trace.FlightOf.Flown;
import crowdline.trace.Found.What;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** How many of the figures flown were found. */
final class FindScore {
    /** What leaves but a line. */
    private static final Set<String> LINES = Set.of(
            "low pass",
            "inverted pass",
            "knife edge pass",
            "aileron roll",
            "triple roll",
            "opposite rolls",
            "half roll",
            "slow roll",
            "two-point roll",
            "four-point roll",
            "eight-point roll",
            "flick roll",
            "half flick",
            "negative flick roll",
            "wing rock");

    private static final Set<String> LEFT_OUT = Set.of("way", "take-off", "run-in", "landing");

    private int shapes;
    private int first;
    private int two;
    private int strict;
    private int lines;
    private int lined;
    private int extra;
    private int listed;
    private int flights;
    private int lineExtra;
    private int lineListed;
    private double sure;
    private double sureRight;
    private double sures;
    private final Map<String, Integer> wrong = new HashMap<>();

    private static double overlap(Flown f, Found o) {
        return Math.max(0, Math.min(f.endS(), o.endS()) - Math.max(f.startS(), o.startS()));
    }

    /** What was found where it was flown: of figures what lies there most, of lines a line that lies there. */
    static @Nullable Found best(Flown flown, List<Found> found, boolean figuresOnly) {
        Found best = null;
        double most = 0;
        for (Found o : found) {
            double over = overlap(flown, o);
            if (over > most && (!figuresOnly || isThere(flown, o, over))) {
                most = over;
                best = o;
            }
        }
        return best;
    }

    private static boolean isThere(Flown flown, Found o, double overS) {
        return o.what() == What.FIGURE && overS > 0.3 * Math.min(o.seconds(), flown.endS() - flown.startS());
    }

    static int rank(Flown flown, @Nullable Found o) {
        if (o == null || o.what() != What.FIGURE) {
            return 9;
        }
        for (int k = 0; k < o.guesses().size(); k++) {
            if (o.guesses().get(k).name().equals(flown.figure())) {
                return k;
            }
        }
        return 9;
    }

    void add(FlightOf flight, List<Found> found) {
        flights++;
        for (Flown f : flight.flown()) {
            if (LEFT_OUT.contains(f.figure())) {
                continue;
            }
            if (LINES.contains(f.figure())) {
                lines++;
                Found there = best(
                        f, found.stream().filter(o -> o.what() == What.LINE).toList(), false);
                boolean right = there != null && overlap(f, there) > 0.4 * (f.endS() - f.startS());
                lined += right ? 1 : 0;
                if (!right) {
                    miss(f, best(f, found, false));
                }
                continue;
            }
            shapes++;
            Found any = best(f, found, false);
            Found figure = best(f, found, true);
            int rank = Math.min(rank(f, any), rank(f, figure));
            first += rank == 0 ? 1 : 0;
            two += rank < 2 ? 1 : 0;
            strict += rank(f, any) < 2 ? 1 : 0;
            if (rank >= 2) {
                miss(f, figure != null ? figure : any);
            }
            if (figure != null) {
                double s = figure.guesses().get(0).sure();
                sures++;
                sure += s;
                sureRight += rank == 0 ? 1 : 0;
            }
        }
        for (Found o : found) {
            if (o.what() == What.LINE) {
                lineListed++;
                lineExtra += flight.flown().stream()
                                .noneMatch(f -> LINES.contains(f.figure()) && overlap(f, o) > 0.3 * o.seconds())
                        ? 1
                        : 0;
            }
            listed += o.what() == What.FIGURE ? 1 : 0;
            if (o.what() == What.FIGURE
                    && flight.flown().stream()
                            .noneMatch(f -> !LEFT_OUT.contains(f.figure()) && overlap(f, o) > 0.5 * o.seconds())) {
                extra++;
                more(flight, o);
            }
        }
    }

    private void more(FlightOf flight, Found o) {
        String in = flight.flown().stream()
                .max(Comparator.comparingDouble(f -> overlap(f, o)))
                .map(Flown::figure)
                .orElse("nothing");
        wrong.merge("more: " + o.guesses().get(0).name() + " in " + in, 1, Integer::sum);
    }

    private void miss(Flown f, @Nullable Found o) {
        String as = o == null
                ? "nothing"
                : o.what() == What.FIGURE ? o.guesses().get(0).name() : o.what().toString();
        wrong.merge(f.figure() + " -> " + as, 1, Integer::sum);
    }

    /** The numbers that a later version is compared by, flight by flight. */
    String row(String name) {
        return String.join(
                "\t",
                name,
                String.valueOf(shapes),
                String.valueOf(first),
                String.valueOf(two),
                String.valueOf(lines),
                String.valueOf(lined),
                String.valueOf(extra),
                String.valueOf(lineExtra));
    }

    /** Of the figures with a shape, those named by the first two guesses. */
    double twoShare() {
        return (double) two / shapes;
    }

    /** Figures found where none was flown. */
    double extraAFlight() {
        return (double) extra / flights;
    }

    /** First guess, first two, first two where what lies there longest counts; lines; all; found where none was; sure. */
    String line(String name) {
        return String.format(
                Locale.ROOT,
                "%-34s %3d fig  first %3.0f %%  two %3.0f %%  strict %3.0f %%  %3d lines %3.0f %%  all %3.0f %%  extra %.1f of %.1f, lines %.1f of %.1f  said %.2f is %.2f",
                name,
                shapes,
                100.0 * first / shapes,
                100.0 * two / shapes,
                100.0 * strict / shapes,
                lines,
                100.0 * lined / Math.max(1, lines),
                100.0 * (two + lined) / (shapes + lines),
                (double) extra / flights,
                (double) listed / flights,
                (double) lineExtra / flights,
                (double) lineListed / flights,
                sure / Math.max(1, sures),
                sureRight / Math.max(1, sures));
    }

    String wrongs() {
        StringBuilder text = new StringBuilder();
        wrong.entrySet().stream()
                .sorted((a, b) -> b.getValue() - a.getValue())
                .limit(90)
                .forEach(e -> text.append(String.format(Locale.ROOT, "  %3d %s%n", e.getValue(), e.getKey())));
        return text.toString();
    }

    static String told(FlightOf flight, List<Found> found) {
        StringBuilder text = new StringBuilder();
        for (Flown f : flight.flown()) {
            text.append(String.format(Locale.ROOT, "  %7.1f %7.1f  %s%n", f.startS(), f.endS(), f.figure()));
            for (Found o : found) {
                if ((o.startS() + o.endS()) / 2 >= f.startS() && (o.startS() + o.endS()) / 2 < f.endS()) {
                    text.append(String.format(
                            Locale.ROOT, "                     %7.1f %7.1f  %s", o.startS(), o.endS(), o.what()));
                    for (Found.Guess g : o.guesses()) {
                        text.append(String.format(Locale.ROOT, " %s %.2f;", g.name(), g.sure()));
                    }
                    text.append("\n");
                }
            }
        }
        return text.toString();
    }
}
